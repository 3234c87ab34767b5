//! Serves the folder on a loopback address, to this machine only.

use std::{
    fs,
    io::{self, BufRead, BufReader, Read, Write},
    net::{Ipv4Addr, TcpListener, TcpStream},
    path::{Path, PathBuf},
    sync::Arc,
    thread,
    time::Duration,
};

use anyhow::Context;

/// How many ports are tried, one after the other.
const PORTS: u16 = 50;

/// The longest request that is listened to.
const REQUEST_BYTES: u64 = 16_384;

/// Serves until the process is ended.
pub fn serve(folder: &Path, port: u16) -> anyhow::Result<()> {
    let listener = listen(port)?;
    println!("served:   http://{}/  (ends with Ctrl-C)", listener.local_addr()?);
    answer_all(&listener, folder)
}

/// The first free port from this one on.
pub fn listen(port: u16) -> anyhow::Result<TcpListener> {
    let mut last = None;
    for port in port..=port.saturating_add(PORTS) {
        match TcpListener::bind((Ipv4Addr::LOCALHOST, port)) {
            Ok(listener) => return Ok(listener),
            Err(error) => last = Some(error),
        }
    }
    let error = last.unwrap_or_else(|| io::ErrorKind::AddrInUse.into());
    Err(error).with_context(|| format!("no port from {port} to {} could be listened on", port.saturating_add(PORTS)))
}

/// Answers every request, each in a thread of its own.
pub fn answer_all(listener: &TcpListener, folder: &Path) -> anyhow::Result<()> {
    let folder = Arc::new(folder.to_path_buf());
    for stream in listener.incoming() {
        let Ok(stream) = stream else { continue };
        let folder = Arc::clone(&folder);
        // A browser that goes away in the middle of an answer is no fault of the server's.
        thread::spawn(move || answer(stream, &folder).ok());
    }
    Ok(())
}

fn answer(mut stream: TcpStream, folder: &Path) -> io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(10)))?;
    stream.set_write_timeout(Some(Duration::from_secs(10)))?;
    let mut lines = BufReader::new(stream.try_clone()?.take(REQUEST_BYTES));
    let mut request = String::new();
    lines.read_line(&mut request)?;
    let mut header = String::new();
    while lines.read_line(&mut header)? > 2 {
        header.clear();
    }
    let mut words = request.split(' ');
    let (method, target) = (words.next().unwrap_or(""), words.next().unwrap_or(""));
    if method != "GET" && method != "HEAD" {
        return write(&mut stream, &Answer::plain("405 Method Not Allowed", "only reading is served"), method);
    }
    let found = file_of(target).and_then(|name| fs::read(folder.join(&name)).ok().map(|bytes| (name, bytes)));
    let found = match found {
        Some((name, bytes)) => Answer { status: "200 OK", content_type: content_type(&name), bytes },
        None => Answer::plain("404 Not Found", "there is no such page"),
    };
    write(&mut stream, &found, method)
}

struct Answer {
    status: &'static str,
    content_type: &'static str,
    bytes: Vec<u8>,
}

impl Answer {
    fn plain(status: &'static str, text: &str) -> Self {
        Self { status, content_type: "text/plain; charset=utf-8", bytes: text.into() }
    }
}

fn write(stream: &mut TcpStream, answer: &Answer, method: &str) -> io::Result<()> {
    let Answer { status, content_type, bytes } = answer;
    write!(
        stream,
        "HTTP/1.1 {status}\r\nContent-Type: {content_type}\r\nContent-Length: {}\r\nCache-Control: no-store\r\n\
         X-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n",
        bytes.len()
    )?;
    if method != "HEAD" {
        stream.write_all(bytes)?;
    }
    stream.flush()
}

/// The file that a request asks for: plain names below the folder and nothing else.
fn file_of(target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    let path = if path.is_empty() { "index.html" } else { path };
    let plain = |name: &str| {
        !name.is_empty()
            && !name.starts_with('.')
            && name.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.'))
    };
    path.split('/').all(plain).then(|| path.split('/').collect())
}

fn content_type(name: &Path) -> &'static str {
    match name.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("json") => "application/json",
        Some("woff2") => "font/woff2",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use std::path::PathBuf;

    use super::file_of;

    #[test]
    fn only_plain_names_below_the_folder_are_served() {
        assert_eq!(file_of("/"), Some(PathBuf::from("index.html")));
        assert_eq!(file_of("/check.html?a=b#c"), Some(PathBuf::from("check.html")));
        assert_eq!(file_of("/a/b.css"), Some(PathBuf::from("a/b.css")));
        for escape in [
            "/../Cargo.toml",
            "/%2e%2e/Cargo.toml",
            "//etc/passwd",
            "/a/../../b",
            "/.git/config",
            "/a\\b",
            "/c:/b",
            "check.html",
            "",
        ] {
            assert_eq!(file_of(escape), None, "{escape}");
        }
    }
}
