//! The program opens no network connection: it has no code for it and no library that has.

use super::{code, files, root};

/// Libraries that speak to hosts. D-Bus, over which the file dialogs are asked for, stays on the machine.
const SPEAK: [&str; 14] = [
    "reqwest",
    "ureq",
    "hyper",
    "curl",
    "isahc",
    "attohttpc",
    "tungstenite",
    "quinn",
    "rustls",
    "native-tls",
    "openssl",
    "socket2",
    "trust-dns-resolver",
    "hickory-resolver",
];

#[test]
fn no_code_and_no_library_reaches_a_network() {
    for path in files(&root().join("src"), "rs") {
        let code = code(&path);
        for word in ["std::net", "TcpStream", "UdpSocket", "TcpListener", "ToSocketAddrs"] {
            assert!(!code.contains(word), "{}: {word}", path.display());
        }
    }
    let lock = std::fs::read_to_string(root().join("Cargo.lock")).unwrap();
    let names: Vec<&str> =
        lock.lines().filter_map(|line| line.strip_prefix("name = \"")?.strip_suffix('"')).collect();
    assert!(names.len() > 300, "the lock file was not read");
    let found: Vec<&&str> = names.iter().filter(|name| SPEAK.contains(name)).collect();
    assert!(found.is_empty(), "{found:?}");
}
