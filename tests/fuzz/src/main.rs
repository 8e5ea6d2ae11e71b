//! One reader of what comes from outside, named by `READER`, fed by libFuzzer: it must read or refuse in words. A
//! panic, a second, or a gigabyte is a failure; `run.sh` sets those limits.

#![no_main]

mod readers;

use std::sync::OnceLock;

use libfuzzer_sys::fuzz_target;

static READER: OnceLock<readers::Reader> = OnceLock::new();

fuzz_target!(|bytes: &[u8]| {
    READER.get_or_init(|| readers::named(&std::env::var("READER").expect("READER names a reader")))(bytes);
});
