//! SHA-256 (FIPS 180-4), for commitments.

/// The first 64 primes.
const PRIMES: [u64; 64] = {
    let mut primes = [0; 64];
    let (mut found, mut candidate) = (0, 2);
    while found < 64 {
        let mut place = 0;
        while place < found && candidate % primes[place] != 0 {
            place += 1;
        }
        if place == found {
            primes[found] = candidate;
            found += 1;
        }
        candidate += 1;
    }
    primes
};

/// First 32 bits of the fraction of a prime's square or cube root, in whole numbers: the root of `prime << 32·degree`.
fn fraction(prime: u64, degree: u32) -> u32 {
    let target = u128::from(prime) << (32 * degree);
    let (mut low, mut high) = (0_u128, 1 << 40);
    while high - low > 1 {
        let middle = u128::midpoint(low, high);
        if middle.pow(degree) <= target { low = middle } else { high = middle }
    }
    low as u32
}

/// The hash of some bytes, in hexadecimal.
#[must_use]
pub fn sha256(bytes: &[u8]) -> String {
    let rounds = PRIMES.map(|prime| fraction(prime, 3));
    let mut state: [u32; 8] = std::array::from_fn(|place| fraction(PRIMES[place], 2));
    let mut padded = bytes.to_vec();
    padded.push(0x80);
    while padded.len() % 64 != 56 {
        padded.push(0);
    }
    padded.extend((8 * bytes.len() as u64).to_be_bytes());
    for block in padded.chunks_exact(64) {
        let mut words = [0_u32; 64];
        for (word, four) in words.iter_mut().zip(block.chunks_exact(4)) {
            *word = u32::from_be_bytes([four[0], four[1], four[2], four[3]]);
        }
        for place in 16..64 {
            let (near, far) = (words[place - 2], words[place - 15]);
            let small = far.rotate_right(7) ^ far.rotate_right(18) ^ (far >> 3);
            let large = near.rotate_right(17) ^ near.rotate_right(19) ^ (near >> 10);
            words[place] = words[place - 16].wrapping_add(small).wrapping_add(words[place - 7]).wrapping_add(large);
        }
        let [mut a, mut b, mut c, mut d, mut e, mut f, mut g, mut h] = state;
        for (constant, word) in rounds.iter().zip(words) {
            let choice = (e & f) ^ (!e & g);
            let sum = e.rotate_right(6) ^ e.rotate_right(11) ^ e.rotate_right(25);
            let first = h.wrapping_add(sum).wrapping_add(choice).wrapping_add(*constant).wrapping_add(word);
            let majority = (a & b) ^ (a & c) ^ (b & c);
            let sum = a.rotate_right(2) ^ a.rotate_right(13) ^ a.rotate_right(22);
            let second = sum.wrapping_add(majority);
            (h, g, f, e, d, c, b, a) = (g, f, e, d.wrapping_add(first), c, b, a, first.wrapping_add(second));
        }
        for (word, more) in state.iter_mut().zip([a, b, c, d, e, f, g, h]) {
            *word = word.wrapping_add(more);
        }
    }
    state.iter().map(|word| format!("{word:08x}")).collect()
}

#[cfg(test)]
mod tests {
    use super::sha256;

    /// The examples published with FIPS 180-4: one block, two blocks, a million letters; and no bytes at all.
    #[test]
    fn published_vectors() {
        for (text, hash) in [
            ("abc".to_string(), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"),
            (
                "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq".to_string(),
                "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
            ),
            ("a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"),
            (String::new(), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
        ] {
            assert_eq!(sha256(text.as_bytes()), hash);
        }
    }
}
