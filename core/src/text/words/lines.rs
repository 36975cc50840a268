//! Lines that are said if there is room.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// A line with what may follow on it. Rank 0 is always said; higher ranks come later and only where they fit.
pub(super) struct Line {
    rank: u8,
    text: String,
    more: Vec<(u8, String)>,
    end: &'static str,
}

impl Line {
    /// A line that is always said.
    pub(super) fn always(text: impl Into<String>) -> Self {
        Self::ranked(0, text)
    }

    /// A line that is said when there is room.
    pub(super) fn ranked(rank: u8, text: impl Into<String>) -> Self {
        Self { rank, text: text.into(), more: Vec::new(), end: "" }
    }

    /// With more on the same line, said only where the line is.
    pub(super) fn and(mut self, rank: u8, text: impl Into<String>) -> Self {
        self.more.push((rank, text.into()));
        self
    }

    /// With a close, such as a full stop after a list of unknown length.
    pub(super) const fn closed(mut self, end: &'static str) -> Self {
        self.end = end;
        self
    }
}

/// Words between blanks.
pub(super) fn words(text: &str) -> usize {
    text.split_whitespace().count()
}

/// The lines that fit, in their order, chosen by rank. A long one that does not fit leaves room for a shorter one.
pub(super) fn fit(lines: &[Line], most: usize) -> Vec<String> {
    let mut said = vec![false; lines.len()];
    let mut said_more: Vec<Vec<bool>> = lines.iter().map(|line| vec![false; line.more.len()]).collect();
    let mut left = most;
    let mut take = |rank: u8, of: u8, text: &str, said: &mut bool| {
        let count = words(text);
        if rank == of && (rank == 0 || count <= left) {
            left = left.saturating_sub(count);
            *said = true;
        }
    };
    let last = lines.iter().flat_map(|line| line.more.iter().map(|(rank, _)| *rank).chain([line.rank])).max();
    for rank in 0..=last.unwrap_or(0) {
        for ((line, said), said_more) in lines.iter().zip(&mut said).zip(&mut said_more) {
            take(line.rank, rank, &line.text, said);
            for ((of, text), said_more) in line.more.iter().zip(said_more) {
                if *said {
                    take(*of, rank, text, said_more);
                }
            }
        }
    }
    let mut out = Vec::new();
    for ((line, _), said_more) in lines.iter().zip(&said).zip(&said_more).filter(|((_, said), _)| **said) {
        let mut text = line.text.clone();
        for ((_, more), _) in line.more.iter().zip(said_more).filter(|(_, said)| **said) {
            text.push_str(more);
        }
        text.push_str(line.end);
        out.push(text);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_weighty_comes_first_and_a_short_one_fills_the_room() {
        let lines = [
            Line::always("one two three"),
            Line::ranked(2, "late and long").and(1, "never alone"),
            Line::ranked(1, "four five").and(3, " six").and(2, " not this one").closed("."),
        ];
        assert_eq!(fit(&lines, 9), ["one two three", "late and long", "four five six."]);
        assert_eq!(fit(&lines, 6), ["one two three", "four five six."]);
        assert_eq!(fit(&lines, 0), ["one two three"]);
    }
}
