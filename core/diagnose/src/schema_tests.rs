//! The data files against their schemas, by a checker for just the keywords that these schemas use.

use std::path::PathBuf;

use serde_json::{Value, json};

const FILES: [&str; 6] = ["circuits", "tests", "cautions", "messages", "faults", "plan"];

fn read(name: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("data").join(name);
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

/// Every way in which a value breaks its schema. Panics on a keyword it does not know, so that none is passed over.
fn breaks(root: &Value, schema: &Value, value: &Value, at: &str, found: &mut Vec<String>) {
    let schema = match schema.get("$ref").and_then(Value::as_str) {
        Some(reference) => root.pointer(reference.trim_start_matches('#')).unwrap(),
        None => schema,
    };
    let number = |v: &Value| v.as_f64().unwrap_or(f64::NAN);
    let count = |v: &Value| v.as_array().map_or(0, Vec::len) as f64;
    for (keyword, rule) in schema.as_object().unwrap() {
        let good = match keyword.as_str() {
            "$schema" | "$defs" | "title" | "description" => true,
            "type" => match rule.as_str().unwrap() {
                "object" => value.is_object(),
                "array" => value.is_array(),
                "string" => value.is_string(),
                "number" => value.is_number(),
                "integer" => value.is_u64() || value.is_i64(),
                "boolean" => value.is_boolean(),
                other => panic!("type {other}"),
            },
            "enum" => rule.as_array().unwrap().contains(value),
            "minimum" => number(value) >= number(rule),
            "maximum" => number(value) <= number(rule),
            "exclusiveMinimum" => number(value) > number(rule),
            "exclusiveMaximum" => number(value) < number(rule),
            "minProperties" => value.as_object().map_or(0, serde_json::Map::len) as f64 >= number(rule),
            "maxProperties" => value.as_object().map_or(0, serde_json::Map::len) as f64 <= number(rule),
            "oneOf" => {
                let fits = |one: &&Value| {
                    let mut wrong = Vec::new();
                    breaks(root, one, value, at, &mut wrong);
                    wrong.is_empty()
                };
                rule.as_array().unwrap().iter().filter(fits).count() == 1
            }
            "minItems" => count(value) >= number(rule),
            "maxItems" => count(value) <= number(rule),
            "pattern" => {
                let text = value.as_str().unwrap_or_default();
                let mark = if rule.as_str().unwrap().contains('_') {
                    '_'
                } else {
                    '-'
                };
                let fits = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == mark;
                !text.is_empty() && text.chars().all(fits) && !text.starts_with(mark)
            }
            "required" => rule
                .as_array()
                .unwrap()
                .iter()
                .all(|key| value.get(key.as_str().unwrap()).is_some()),
            "items" => {
                for (i, item) in value.as_array().into_iter().flatten().enumerate() {
                    breaks(root, rule, item, &format!("{at}/{i}"), found);
                }
                true
            }
            "properties" => {
                for (key, rule) in rule.as_object().unwrap() {
                    if let Some(inner) = value.get(key) {
                        breaks(root, rule, inner, &format!("{at}/{key}"), found);
                    }
                }
                true
            }
            "additionalProperties" => {
                let known = schema.get("properties").and_then(Value::as_object);
                let mut strange = value
                    .as_object()
                    .into_iter()
                    .flatten()
                    .filter(|(key, _)| known.is_none_or(|known| !known.contains_key(*key)));
                if rule.as_bool() == Some(false) {
                    strange.next().is_none()
                } else {
                    strange.for_each(|(key, inner)| breaks(root, rule, inner, &format!("{at}/{key}"), found));
                    true
                }
            }
            other => panic!("this checker does not know '{other}'"),
        };
        if !good {
            found.push(format!("{at}: {keyword}"));
        }
    }
}

#[test]
fn the_data_files_keep_their_schemas() {
    for name in FILES {
        let (schema, data) = (
            read(&format!("{name}.schema.json")),
            read(&format!("{name}.json")),
        );
        assert_eq!(data["$schema"], format!("{name}.schema.json"));
        let mut found = Vec::new();
        breaks(&schema, &schema, &data, name, &mut found);
        assert!(found.is_empty(), "{found:?}");
    }
}

#[test]
fn a_file_that_breaks_its_schema_is_found() {
    let schema = read("cautions.schema.json");
    for broken in [
        json!({"$schema": "x", "about": "x", "cautions": []}),
        json!({"$schema": "x", "about": "x", "cautions": [{"id": "fumes", "signal": "beware"}]}),
        json!({"$schema": "x", "about": "x", "cautions": [{"id": "Fumes", "signal": "warning"}]}),
        json!({"$schema": "x", "about": "x", "cautions": [{"id": "fumes", "signal": "warning", "more": 1}]}),
        json!({"$schema": "x", "cautions": [{"id": "fumes", "signal": "warning"}]}),
        json!({"$schema": "x", "about": 3, "cautions": [{"id": "fumes", "signal": "warning"}]}),
    ] {
        let mut found = Vec::new();
        breaks(&schema, &schema, &broken, "broken", &mut found);
        assert_eq!(found.len(), 1, "{broken}: {found:?}");
    }
}
