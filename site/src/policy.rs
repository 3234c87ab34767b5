//! The content security policy: nothing runs, styles or loads but what the builder put there.

use base64::{Engine as _, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};

/// The policy of a page whose script and style are files beside it. Browsers differ in whether `'self'` covers a page
/// opened from disk, hence `file:` beside it.
pub fn of_folder_page(inline_style: &str) -> String {
    format!(
        "default-src 'none'; img-src data:; connect-src 'none'; base-uri 'none'; form-action 'none'; \
         script-src 'self' file: 'wasm-unsafe-eval'; style-src 'self' file: {}; \
         font-src 'self' file:; worker-src blob:",
        hash(inline_style)
    )
}

/// The policy of the page that holds everything inside itself: exactly these texts and no others.
pub fn of_one_file(script: &str, styles: &[&str]) -> String {
    let styles: Vec<String> = styles.iter().map(|style| hash(style)).collect();
    format!(
        "default-src 'none'; img-src data:; connect-src 'none'; base-uri 'none'; form-action 'none'; \
         script-src {} 'wasm-unsafe-eval'; style-src {}; font-src data:; worker-src blob:",
        hash(script),
        styles.join(" ")
    )
}

/// The hash source of an inline text, byte by byte as it stands between its tags.
pub fn hash(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text.as_bytes())))
}

#[cfg(test)]
mod tests {
    use super::hash;

    #[test]
    fn the_hash_of_a_text_is_the_published_one() {
        // Computed apart from this crate: printf "%s" "alert('Hello, world.');" | openssl dgst -sha256 -binary | base64
        assert_eq!(hash("alert('Hello, world.');"), "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='");
    }
}
