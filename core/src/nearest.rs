//! The nearest known word to one that is not known, for error messages. No heap.

/// Longest word compared; longer ones are compared by their start.
const LONGEST: usize = 40;

/// The candidate with the smallest edit distance to `word`, ignoring case, hyphens, underscores and spaces; of equally
/// near ones the one that begins alike for longest.
pub(crate) fn nearest<'a>(word: &str, candidates: impl Iterator<Item = &'a str>) -> &'a str {
    let alike =
        |candidate: &str| letters(word).zip(letters(candidate)).take_while(|(left, right)| left == right).count();
    candidates.min_by_key(|candidate| (distance(word, candidate), LONGEST - alike(candidate))).unwrap_or("(none)")
}

fn letters(word: &str) -> impl Iterator<Item = u8> + Clone + '_ {
    word.bytes().filter(|byte| !matches!(byte, b'-' | b'_' | b' ')).map(|byte| byte.to_ascii_lowercase()).take(LONGEST)
}

/// Edit distance in which a swap of two neighbours, the commonest slip, counts as one edit. Three rows of memory.
fn distance(left: &str, right: &str) -> usize {
    let mut row = [0_usize; LONGEST + 1];
    for (index, cell) in row.iter_mut().enumerate() {
        *cell = index;
    }
    let mut above = row;
    let mut letter_before = None;
    for (line, letter) in letters(left).enumerate() {
        let (two_above, one_above) = (above, row);
        row = [line + 1; LONGEST + 1];
        let mut wanted_before = None;
        let at = |cells: &[usize], place: usize| cells.get(place).copied().unwrap_or(usize::MAX / 2);
        for (column, wanted) in letters(right).enumerate() {
            let mut cost = (at(&one_above, column) + usize::from(letter != wanted))
                .min(at(&one_above, column + 1) + 1)
                .min(at(&row, column) + 1);
            let swapped = letter_before == Some(wanted) && wanted_before == Some(letter);
            if swapped && column > 0 {
                cost = cost.min(at(&two_above, column - 1) + 1);
            }
            if let Some(cell) = row.get_mut(column + 1) {
                *cell = cost;
            }
            wanted_before = Some(wanted);
        }
        above = one_above;
        letter_before = Some(letter);
    }
    row.get(letters(right).count()).copied().unwrap_or(usize::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_edits() {
        assert_eq!(distance("kitten", "sitting"), 3);
        assert_eq!(distance("", "abc"), 3);
        assert_eq!(distance("abc", ""), 3);
        assert_eq!(distance("R410a", "R-410A"), 0);
        assert_eq!(distance("R-401A", "R-410A"), 1);
        assert_eq!(distance("abcd", "badc"), 2);
        assert_eq!(distance("ab", "b"), 1);
    }

    #[test]
    fn finds_the_nearest() {
        assert_eq!(nearest("R-401A", ["R-22", "R-407C", "R-410A"].into_iter()), "R-410A");
        assert_eq!(nearest("R-410", ["R-41", "R-410A"].into_iter()), "R-410A");
        assert_eq!(nearest("r410", ["R-22", "R-407C", "R-410A"].into_iter()), "R-410A");
    }
}
