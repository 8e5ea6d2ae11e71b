//! The catalogs of words and the code that says them.
//!
//! - Every message that is said exists, with just the arguments it is given.
//! - Every message of the catalogs is said somewhere.
//! - Every language has the same messages with the same arguments.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

use super::{code, files, root};

/// Messages and attributes by id (`message` or `message.attribute`), each with the arguments it names.
type Catalog = BTreeMap<String, BTreeSet<String>>;

/// Marks the id of another message among the arguments, until it is resolved.
const REFERENCE: &str = "message ";

/// What a language other than US English calls the entries of the built-in catalog. US English stands in the
/// catalog's own files; `src/words/called.rs` tests that each of its texts has its message here.
const CATALOG_NAMES: &str = "catalog-names.ftl";

/// The messages of a language, but for its names of the catalog's entries.
fn catalog(language: &str) -> Catalog {
    let mut catalog = Catalog::new();
    let all = files(&root().join("assets/words").join(language), "ftl");
    for path in all.iter().filter(|path| !path.ends_with(CATALOG_NAMES)) {
        let text = fs::read_to_string(path).unwrap();
        let resource = parser::parse(text.as_str());
        let resource = resource.unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", path.display()));
        for entry in resource.body {
            let Entry::Message(message) = entry else { continue };
            let id = message.id.name.to_owned();
            if let Some(value) = &message.value {
                let before = catalog.insert(id.clone(), arguments(value));
                assert!(before.is_none(), "{}: {id} stands twice", path.display());
            }
            for attribute in &message.attributes {
                catalog.insert(format!("{id}.{}", attribute.id.name), arguments(&attribute.value));
            }
        }
    }
    let plain = catalog.clone();
    for named in catalog.values_mut() {
        while let Some(reference) = named.iter().find(|name| name.starts_with(REFERENCE)).cloned() {
            named.remove(&reference);
            named.extend(plain[&reference[REFERENCE.len()..]].iter().cloned());
        }
    }
    catalog
}

fn arguments(pattern: &Pattern<&str>) -> BTreeSet<String> {
    let mut named = BTreeSet::new();
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, &mut named);
        }
    }
    named
}

fn of_expression(expression: &Expression<&str>, named: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, named),
        Expression::Select { selector, variants } => {
            of_inline(selector, named);
            for variant in variants {
                named.extend(arguments(&variant.value));
            }
        }
    }
}

fn of_inline(inline: &InlineExpression<&str>, named: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            named.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, named),
        // Another message within this one takes the same arguments.
        InlineExpression::MessageReference { id, .. } => {
            named.insert(format!("{REFERENCE}{}", id.name));
        }
        _ => {}
    }
}

/// What a `say!` says: the message and the names of the arguments it is given.
fn said(code: &str) -> Vec<(String, BTreeSet<String>)> {
    let mut found = Vec::new();
    for (at, _) in code.match_indices("say!(") {
        let inside = balanced(&code[at + "say!".len()..]);
        let parts = split(inside);
        let Some(id) = parts.get(1).and_then(|part| part.trim().strip_prefix('"')?.strip_suffix('"')) else {
            continue;
        };
        let names = parts[2..].iter().filter_map(|part| part.split_once('=').map(|(name, _)| name.trim()));
        found.push((id.to_owned(), names.filter(|name| !name.is_empty()).map(str::to_owned).collect()));
    }
    found
}

/// The text within the bracket that a text starts with.
fn balanced(text: &str) -> &str {
    let (mut depth, mut in_string, mut escaped) = (0, false, false);
    for (at, c) in text.char_indices() {
        match c {
            _ if escaped => escaped = false,
            '\\' if in_string => escaped = true,
            '"' => in_string = !in_string,
            '(' | '[' | '{' if !in_string => depth += 1,
            ')' | ']' | '}' if !in_string => {
                depth -= 1;
                if depth == 0 {
                    return &text[1..at];
                }
            }
            _ => {}
        }
    }
    text
}

/// The parts between the commas of the outermost level.
fn split(text: &str) -> Vec<&str> {
    let (mut depth, mut in_string, mut escaped, mut start) = (0, false, false, 0);
    let mut parts = Vec::new();
    for (at, c) in text.char_indices() {
        match c {
            _ if escaped => escaped = false,
            '\\' if in_string => escaped = true,
            '"' => in_string = !in_string,
            '(' | '[' | '{' if !in_string => depth += 1,
            ')' | ']' | '}' if !in_string => depth -= 1,
            ',' if !in_string && depth == 0 => {
                parts.push(&text[start..at]);
                start = at + 1;
            }
            _ => {}
        }
    }
    parts.push(&text[start..]);
    parts
}

/// All string literals of a code.
fn literals(code: &str) -> BTreeSet<String> {
    // A quote as a character opens no text.
    let code = code.replace("'\"'", "");
    let mut found = BTreeSet::new();
    let mut rest = code.as_str();
    while let Some(start) = rest.find('"') {
        let after = &rest[start + 1..];
        let mut escaped = false;
        let end = after.char_indices().find(|(_, c)| match c {
            _ if escaped => {
                escaped = false;
                false
            }
            '\\' => {
                escaped = true;
                false
            }
            c => *c == '"',
        });
        let Some((end, _)) = end else { break };
        found.insert(after[..end].to_owned());
        rest = &after[end + 1..];
    }
    found
}

fn all_code() -> Vec<String> {
    files(&root().join("src"), "rs").iter().map(|path| code(path)).collect()
}

#[test]
fn every_message_that_is_said_exists_with_its_arguments() {
    let catalog = catalog("en-US");
    let mut faults = Vec::new();
    for (id, given) in all_code().iter().flat_map(|code| said(code)) {
        match catalog.get(&id) {
            None => faults.push(format!("{id} is said and stands in no catalog")),
            Some(named) if *named != given => {
                faults.push(format!("{id} names {named:?} and is given {given:?}"));
            }
            Some(_) => {}
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn every_message_is_said() {
    let mut known: BTreeSet<String> = all_code().iter().flat_map(|code| literals(code)).collect();
    for path in files(&root().join("assets/papers"), "typ") {
        known.extend(literals(&fs::read_to_string(path).unwrap()));
    }
    // In the page's template ids stand in quotes within quotes.
    for path in files(&root().join("assets/papers"), "html") {
        known.extend(fs::read_to_string(path).unwrap().split('"').map(str::to_owned));
    }
    // A message may stand within others.
    for path in files(&root().join("assets/words/en-US"), "ftl") {
        let text = fs::read_to_string(path).unwrap();
        let within = text.split("{ ").skip(1).filter_map(|rest| rest.split(" }").next());
        known.extend(within.map(str::to_owned));
    }
    // Families that are named by the ids of a table.
    let table = |id: &str, family: &str| id.strip_prefix(family).is_some_and(|rest| known.contains(rest));
    let unsaid: Vec<String> = catalog("en-US")
        .into_keys()
        .filter(|id| !id.contains('.'))
        .filter(|id| {
            let by_table = table(id, "field-")
                || table(id, "cmd-")
                || id.starts_with("glossary-")
                || id.starts_with("command-line-");
            // A message may be said by its attributes alone.
            let by_part = known.iter().any(|text| text.split('.').next() == Some(id));
            !by_table && !by_part
        })
        .collect();
    assert!(unsaid.is_empty(), "said nowhere:\n{}", unsaid.join("\n"));
}

#[test]
fn every_language_has_the_same_messages() {
    let own = catalog("en-US");
    for folder in fs::read_dir(root().join("assets/words")).unwrap() {
        let language = folder.unwrap().file_name().to_string_lossy().into_owned();
        assert_eq!(catalog(&language), own, "{language} differs from en-US");
    }
}
