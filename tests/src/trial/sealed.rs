//! The sealed fleet: its seed was chosen before the work began and is not in the repository. What is there is a
//! commitment, the SHA-256 of `<seed>:<salt>`, so that who opens the fleet shows that no other seed was tried.

use super::sha256::sha256;

/// The commitment.
const COMMITTED: &str = include_str!("../../data/sealed_fleet.txt");

/// The seed, if it is the one that was committed to.
///
/// # Errors
/// What does not fit, in words.
pub fn open(seed: &str, salt: &str) -> Result<u64, String> {
    opens(seed, salt, COMMITTED)
}

fn opens(seed: &str, salt: &str, committed: &str) -> Result<u64, String> {
    let hash = sha256(format!("{seed}:{salt}").as_bytes());
    let stated = committed.lines().find(|line| !line.starts_with('#')).map(str::trim);
    if stated != Some(hash.as_str()) {
        return Err(format!("this seed and salt hash to {hash}, which is not the commitment of the sealed fleet"));
    }
    seed.parse().map_err(|_| "the seed is a whole number".to_string())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_committed_seed_opens() {
        let committed = format!("# a comment\n{}\n", sha256(b"12:salt"));
        assert_eq!(opens("12", "salt", &committed), Ok(12));
        assert!(opens("13", "salt", &committed).is_err());
        assert!(opens("12", "pepper", &committed).is_err());
        assert!(open("12", "salt").is_err());
    }
}
