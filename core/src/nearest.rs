//! The nearest known word to one that is not known, for error messages. No heap.

/// Longest word compared; longer ones are compared by their start.
const LONGEST: usize = 40;

/// The candidate with the smallest edit distance to `word`, ignoring case, hyphens, underscores and spaces.
pub(crate) fn nearest<'a>(word: &str, candidates: impl Iterator<Item = &'a str>) -> &'a str {
    candidates.min_by_key(|candidate| distance(word, candidate)).unwrap_or("(none)")
}

fn letters(word: &str) -> impl Iterator<Item = u8> + Clone + '_ {
    word.bytes().filter(|byte| !matches!(byte, b'-' | b'_' | b' ')).map(|byte| byte.to_ascii_lowercase()).take(LONGEST)
}

/// Levenshtein distance with one row of memory.
fn distance(left: &str, right: &str) -> usize {
    let mut row = [0_usize; LONGEST + 1];
    for (index, cell) in row.iter_mut().enumerate() {
        *cell = index;
    }
    let mut last = letters(right).count();
    for (line, wanted) in letters(left).enumerate() {
        let mut diagonal = line;
        let mut before = line + 1;
        for (cell, letter) in row.iter_mut().skip(1).zip(letters(right)) {
            let above = *cell;
            let cost = usize::from(letter != wanted);
            *cell = (diagonal + cost).min(above + 1).min(before + 1);
            diagonal = above;
            before = *cell;
        }
        if let Some(first) = row.first_mut() {
            *first = line + 1;
        }
        last = before;
    }
    last
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
    }

    #[test]
    fn finds_the_nearest() {
        assert_eq!(nearest("R-401A", ["R-22", "R-410A", "R-407C"].into_iter()), "R-410A");
        assert_eq!(nearest("r410", ["R-22", "R-410A", "R-407C"].into_iter()), "R-410A");
    }
}
