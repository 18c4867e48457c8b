//! What stands in the page itself, so that its first words are painted as soon as it is here: the style of the first
//! screen, and the script of the first words. The page's policy names both by their hashes (CSP Level 3, section 8.4).

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

use crate::run::Outcome;

/// The page with a style and a script in place of the elements that name their files.
///
/// # Errors
/// The page does not name a file so, has no policy for it, or the file would end its element.
pub fn with_inline(page: &str, style: (&str, &str), script: (&str, &str)) -> Outcome<String> {
    let styled = put(page, &format!("<link rel=\"stylesheet\" href=\"./{}\">", style.0), "style", style.1)?;
    put(&styled, &format!("<script src=\"./{}\"></script>", script.0), "script", script.1)
}

/// Puts a text into an element of its own in place of `before`, and lets the policy allow that text.
fn put(page: &str, before: &str, element: &str, text: &str) -> Outcome<String> {
    let (policy, end) = (format!("{element}-src 'self'"), format!("</{element}"));
    for wanted in [before, &policy] {
        if page.matches(wanted).count() != 1 {
            return Err(format!("The page must say `{wanted}` once. Mend it in public/index.html."));
        }
    }
    if text.contains(&end) {
        return Err(format!("What is put into the page says `{end}`, which would end it there. Say it otherwise."));
    }
    let allowed = format!("{policy} 'sha256-{}'", STANDARD.encode(Sha256::digest(text)));
    Ok(page.replace(&policy, &allowed).replace(before, &format!("<{element}>{text}</{element}>")))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "script-src 'self' x; style-src 'self'\n<link rel=\"stylesheet\" href=\"./a.css\">\n<script src=\"./a.js\"></script>";

    /// The digest of `alert('Hello, world.');` is the example of CSP Level 3, section 8.4.
    #[test]
    fn the_policy_allows_what_is_put_in() {
        let page = with_inline(PAGE, ("a.css", ".a{}"), ("a.js", "alert('Hello, world.');"));
        let script = "script-src 'self' 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=' x";
        let style = "style-src 'self' 'sha256-";
        let page = page.expect("a page");
        assert!(page.starts_with(script) && page.contains(style), "{page}");
        assert!(page.ends_with("\n<style>.a{}</style>\n<script>alert('Hello, world.');</script>"), "{page}");
    }

    #[test]
    fn what_the_page_does_not_name_or_would_end_it_is_refused() {
        assert!(with_inline(PAGE, ("b.css", ""), ("a.js", "")).is_err());
        assert!(with_inline("", ("a.css", ""), ("a.js", "")).is_err());
        assert!(with_inline(PAGE, ("a.css", ""), ("a.js", "'</script>'")).is_err());
    }
}
