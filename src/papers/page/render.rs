//! Filling the page's template: texts escaped, data safe within a script element, the script named by its
//! fingerprint.

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use minijinja::value::Serde;
use minijinja::{AutoEscape, Environment, UndefinedBehavior, Value};
use sha2::{Digest as _, Sha256};

use super::PageData;

/// What begins the one script that is run.
const SCRIPT: (&str, &str) = ("<script>", "</script>");

/// Fills a template.
///
/// # Errors
/// The line of its fault, from 1, if it has one, and what the template engine says in US English.
pub(in crate::papers) fn render(template: &str, data: &PageData) -> Result<String, (Option<usize>, String)> {
    let mut engine = Environment::new();
    engine.set_auto_escape_callback(|_| AutoEscape::Html);
    engine.set_undefined_behavior(UndefinedBehavior::Strict);
    let fault = |error: minijinja::Error| {
        let reason = error.detail().map_or_else(|| error.kind().to_string(), str::to_owned);
        (error.line(), reason)
    };
    engine.add_template("page", template).map_err(fault)?;
    let page = engine.get_template("page").map_err(fault)?;
    let places = Value::from(Serde(&data.places));
    let drawn = Value::from_safe_string(for_script(&data.drawn));
    let fill = |fingerprint: &str| {
        let script = Value::from_safe_string(fingerprint.to_owned());
        page.render(minijinja::context! { data => drawn.clone(), script, ..places.clone() }).map_err(fault)
    };
    // What the script says is known once the template is filled.
    let fingerprint = fingerprint(&fill("none")?);
    fill(&fingerprint)
}

/// JSON that can stand within a script element: nothing in it ends the element or opens a comment, and it
/// is a script's literal, too.
fn for_script(json: &serde_json::Value) -> String {
    let mut safe = String::new();
    for c in json.to_string().chars() {
        match c {
            '<' => safe.push_str("\\u003c"),
            '>' => safe.push_str("\\u003e"),
            '&' => safe.push_str("\\u0026"),
            '\u{2028}' => safe.push_str("\\u2028"),
            '\u{2029}' => safe.push_str("\\u2029"),
            other => safe.push(other),
        }
    }
    safe
}

/// By what a policy lets the page's own script run and none other; `none` if it has none.
fn fingerprint(page: &str) -> String {
    let script = page.rsplit_once(SCRIPT.0).and_then(|(_, rest)| rest.split_once(SCRIPT.1));
    script.map_or_else(
        || "none".to_owned(),
        |(script, _)| format!("sha256-{}", BASE64_STANDARD.encode(Sha256::digest(script.as_bytes()))),
    )
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    const HOSTILE: &str = "</script><img src=x onerror=\"alert('1')\"><!-- \u{2028}\u{2029} & {{ 7 * 7 }}";

    fn page(template: &str) -> Result<String, (Option<usize>, String)> {
        let data = PageData { places: json!({ "name": HOSTILE }), drawn: json!({ "name": HOSTILE }) };
        render(template, &data)
    }

    #[test]
    fn what_was_typed_never_becomes_markup() {
        let made = page("<p title=\"{{ name }}\">{{ name }}</p>").unwrap();
        assert_eq!(made.matches('<').count(), 2, "{made}");
        assert_eq!(made.matches('"').count(), 2, "{made}");
        assert!(made.contains("{{ 7 * 7 }}") && made.contains("&lt;&#x2f;script&gt;"), "{made}");
    }

    #[test]
    fn data_in_a_script_element_stays_data_and_reads_back_the_same() {
        let made = page("<script type=\"application/json\">{{ data }}</script>").unwrap();
        assert_eq!(made.matches("</script>").count(), 1, "{made}");
        assert!(!made.contains("<!--") && !made.contains(['\u{2028}', '\u{2029}']), "{made}");
        let inside = made.split_once('>').and_then(|(_, rest)| rest.rsplit_once("</")).unwrap().0;
        let read: serde_json::Value = serde_json::from_str(inside).unwrap();
        assert_eq!(read["name"], HOSTILE);
    }

    /// The digest by another program: `printf 'let a = 1;' | openssl dgst -sha256 -binary | base64`.
    #[test]
    fn the_policy_names_the_script_as_it_stands() {
        let made = page("<meta content=\"{{ script }}\"><script>let a = 1;</script>").unwrap();
        assert!(made.contains("sha256-xY6QKfH9PRsQnLz56nj6MBwiK5oHg+im1Jkpdp1x/Ck="), "{made}");
        assert!(page("<meta content=\"{{ script }}\">").unwrap().contains("\"none\""));
    }

    #[test]
    fn a_fault_is_told_with_its_line() {
        assert_eq!(page("<p>\n{% if %}").unwrap_err().0, Some(2));
        assert_eq!(page("<p>\n\n{{ nothing_like_it }}").unwrap_err().0, Some(3));
    }
}
