//! Vehicle kinds: what is known of one is a stream of entries of its own, as a job is. So it is corrected, undone,
//! exported and merged like everything else, and two phones that name a kind alike mean the same stream.

use sha2::{Digest, Sha256};

use crate::entry::JobId;

/// The stream of what is known of the vehicle kind of this name; none for a name without a letter or digit.
///
/// Case, blanks and signs don't count: `Van 2.0` and `VAN  2,0` are one kind.
pub fn stream(label: &str) -> Option<JobId> {
    let words: Vec<String> = label
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    if words.is_empty() {
        return None;
    }
    let digest = Sha256::new()
        .chain_update(b"vehicle kind ")
        .chain_update(words.join(" "))
        .finalize();
    let mut id = [0; 16];
    for (to, from) in id.iter_mut().zip(digest.iter()) {
        *to = *from;
    }
    Some(JobId(id))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_kind_has_one_stream_however_it_is_written() {
        assert_eq!(stream("Van 2.0"), stream("  VAN  2,0 "));
        assert_ne!(stream("Van 2.0"), stream("Van 20"));
        assert_eq!(stream(" - "), None);
    }
}
