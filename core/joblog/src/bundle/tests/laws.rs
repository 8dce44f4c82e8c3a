use proptest::prelude::*;

use super::*;

/// What one phone does: `(job, what, which words or picture)`.
fn steps() -> impl Strategy<Value = Vec<(u8, u8, u8)>> {
    proptest::collection::vec((0u8..3, 0u8..6, any::<u8>()), 0..10)
}

fn go_on(phone: &mut Phone, steps: &[(u8, u8, u8)]) {
    for (job, what, seed) in steps {
        let job = JobId([*job; 16]);
        let last = phone.store.entries(job).unwrap().last().map(|entry| entry.key);
        match (what, last) {
            (0, Some(target)) => phone.put(job, &Payload::Undo(Undo { target })),
            (1, _) => phone.photo(job, seed % 8 + 1, *seed),
            (2, _) => {
                let label = format!("Van {}", seed % 3);
                let kind = kind::stream(&label).unwrap();
                phone.put(kind, &Payload::VehicleKind(VehicleKind { label }));
            }
            (3, _) => {
                phone.store.bin(job, at(i64::from(*seed))).unwrap();
            }
            _ => phone.note(job, &format!("\u{0}\n\"{seed}\" ز 日本 1e{seed}")),
        }
    }
}

fn photo_files(phone: &Phone) -> Vec<(std::ffi::OsString, Vec<u8>)> {
    let Ok(files) = fs::read_dir(phone.dir.path().join("photos")) else {
        return Vec::new();
    };
    let mut files: Vec<_> = files
        .map(|file| file.unwrap())
        .map(|file| (file.file_name(), fs::read(file.path()).unwrap()))
        .collect();
    files.sort();
    files
}

fn states(phone: &Phone) -> Vec<crate::JobState> {
    (0..3)
        .map(|job| phone.store.fold(JobId([job; 16])).unwrap())
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(10))]

    #[test]
    fn a_round_trip_brings_the_log_and_its_photos_back(steps in steps()) {
        let (mut from, to) = (Phone::new(1), Phone::new(2));
        go_on(&mut from, &steps);
        let bundle = from.export(&Selection::All);
        let received = to.import(&bundle).unwrap();
        prop_assert_eq!(received.broken_photos, 0);
        prop_assert_eq!(to.store.all_entries().unwrap(), from.store.all_entries().unwrap());
        prop_assert_eq!(photo_files(&to), photo_files(&from));
        prop_assert_eq!(states(&to), states(&from));
        // A second time nothing is new.
        let again = to.import(&bundle).unwrap();
        prop_assert_eq!((again.merged.added, again.photos), (0, 0));
    }

    #[test]
    fn merging_both_ways_gives_both_phones_the_same(mine in steps(), theirs in steps(), later in steps()) {
        let (mut a, mut b) = (Phone::new(1), Phone::new(2));
        go_on(&mut a, &mine);
        go_on(&mut b, &theirs);
        for steps in [&later, &Vec::new()] {
            let (from_a, from_b) = (a.export(&Selection::All), b.export(&Selection::All));
            a.import(&from_b).unwrap();
            b.import(&from_a).unwrap();
            prop_assert_eq!(a.store.all_entries().unwrap(), b.store.all_entries().unwrap());
            prop_assert_eq!(photo_files(&a), photo_files(&b));
            prop_assert_eq!(states(&a), states(&b));
            go_on(&mut a, steps);
            go_on(&mut b, steps);
        }
    }
}
