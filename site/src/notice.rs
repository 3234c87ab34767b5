//! What the page says when its scripts do not run.
//!
//! The second notice stands there visibly until the page's code has started and hides it, so a file that was cut short
//! or altered says so by itself: the policy lets only the unaltered script run. It must read without style as well,
//! since the style may have been altered too. Where scripts are switched off, only the first notice is told.

use crate::link::Shape;

/// The style within `<noscript>`: scripts are off, so the other notice would be wrong.
pub const NO_SCRIPT_STYLE: &str = "#not-started{display:none}";

/// The mark by which the page's code knows that the whole style has arrived.
pub const STYLE_MARK: &str = ":root{--steadfoot-style:whole}\n";

/// The style of the notices: the second one waits a moment, so that it does not flash up while a good page starts.
pub const STYLE: &str = "\
#scripts-off,#not-started{margin:1rem auto;max-width:46em;padding:.6rem 1rem;border:2px solid}
@keyframes not-started{from{visibility:hidden}to{visibility:visible}}
@media screen{#not-started{animation:not-started 0s 1.5s both}}
#not-started[hidden]{display:none}
";

/// Both notices.
pub fn html(shape: Shape) -> String {
    let altered = match shape {
        Shape::OneFile => {
            "Either this file was altered or cut short on its way to you (mail programs do that to attachments), or this \
             browser is too old for it. Ask for the file again, packed as a zip archive, or open it in a current browser."
        }
        Shape::Folder => {
            "Either the script files that belong beside this page are missing or were altered, or this browser is too \
             old for them. Copy the whole folder again, or open it in a current browser."
        }
    };
    format!(
        "<noscript><p id=\"scripts-off\">Scripts are switched off in this browser. The text and the results below were \
         worked out when this page was made and can be read; nothing can be changed or computed here until scripts \
         are allowed.</p></noscript>\n\
         <p id=\"not-started\" role=\"status\"><strong>The calculations on this page have not started.</strong> {altered} \
         Until then, trust no number here that you cannot follow yourself.</p>\n"
    )
}
