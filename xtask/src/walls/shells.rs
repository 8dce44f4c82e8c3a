//! What every shell owes the core: each screen drawn, each request fulfilled, each action sent. The cases are read from
//! the core's own sources, so that a new one is missed by nobody.
//!
//! Most actions come ready-made on what the core puts on a screen, and a shell sends them without knowing them. The
//! others, which no source of the core makes, every shell has to make itself.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail};
use syn::visit::Visit;

use crate::toolchain::files_under;

const PROTOCOL: &str = "core/companion/src/protocol";
const CORE: &str = "core/companion/src";

/// A shell: where its sources are, and how its language names the cases of an enum.
struct Shell {
    name: &'static str,
    /// Below these it makes actions.
    sources: &'static [&'static str],
    ending: &'static str,
    /// Where it tells the screens apart, and where the requests.
    screens: &'static str,
    requests: &'static str,
    /// How it takes a case, given the enum and the case as the core calls them.
    takes: fn(&str, &str) -> Vec<String>,
    /// How it makes an action.
    makes: fn(&str) -> String,
}

const SHELLS: [Shell; 2] = [
    Shell {
        name: "Android",
        sources: &["android/ui/src/main/kotlin", "android/app/src/main/kotlin"],
        ending: ".kt",
        screens: "android/ui/src/main/kotlin/holdfast/ui/HoldfastScreens.kt",
        requests: "android/ui/src/main/kotlin/holdfast/ui/bridge/HoldfastModel.kt",
        takes: |of, case| vec![format!("is {of}.{case} ->")],
        makes: |case| format!("Action.{case}"),
    },
    Shell {
        name: "iOS",
        sources: &["ios/Sources/HoldfastKit", "ios/Sources/HoldfastApp"],
        ending: ".swift",
        screens: "ios/Sources/HoldfastApp/ScreenView.swift",
        requests: "ios/Sources/HoldfastKit/Requests.swift",
        takes: |_, case| {
            let case = lower(case);
            vec![format!("case .{case}("), format!("case .{case}:")]
        },
        makes: |case| format!("Action.{}", lower(case)),
    },
];

/// Everything that some shell lacks.
///
/// # Errors
/// When a source can't be read, or the core's enums are not where they were.
pub fn lacks(root: &Path) -> Result<Vec<String>> {
    let screens = cases(root, "screen.rs", "Body")?;
    let requests = cases(root, "request.rs", "Request")?;
    let actions = own_actions(root)?;
    let mut lacks = Vec::new();
    for shell in &SHELLS {
        for (of, cases, file) in [
            ("Body", &screens, shell.screens),
            ("Request", &requests, shell.requests),
        ] {
            let text = fs::read_to_string(root.join(file)).with_context(|| format!("reading {file}"))?;
            let code = code(&text);
            for case in untaken(&code, cases, |case| (shell.takes)(of, case)) {
                lacks.push(format!("{} does not handle {of}::{case} ({file})", shell.name));
            }
        }
        let code = sources(root, shell)?;
        for case in actions.iter().filter(|case| !holds(&code, &(shell.makes)(case))) {
            lacks.push(format!("{} never sends Action::{case}", shell.name));
        }
    }
    Ok(lacks)
}

fn untaken(code: &str, cases: &[String], taken: impl Fn(&str) -> Vec<String>) -> Vec<String> {
    let is_taken = |case: &&String| taken(case).iter().any(|words| code.contains(words.as_str()));
    cases.iter().filter(|case| !is_taken(case)).cloned().collect()
}

/// The actions that a shell has to make: those that no source of the core makes.
fn own_actions(root: &Path) -> Result<Vec<String>> {
    let all = cases(root, "action.rs", "Action")?;
    let mut made = Made::default();
    for file in files_under(&root.join(CORE), ".rs")? {
        let text = fs::read_to_string(&file)?;
        let parsed = syn::parse_file(&text).with_context(|| format!("parsing {}", file.display()))?;
        made.visit_file(&parsed);
    }
    let own: Vec<_> = all.into_iter().filter(|case| !made.0.contains(case)).collect();
    if own.is_empty() || made.0.is_empty() {
        bail!("the core seems to make all actions or none: this check guards nothing");
    }
    Ok(own)
}

/// The cases of one of the protocol's enums.
fn cases(root: &Path, file: &str, name: &str) -> Result<Vec<String>> {
    let path = root.join(PROTOCOL).join(file);
    let text = fs::read_to_string(&path).with_context(|| format!("reading {}", path.display()))?;
    enum_cases(&text, name).with_context(|| format!("there is no enum {name} in {file}"))
}

fn enum_cases(text: &str, name: &str) -> Option<Vec<String>> {
    let file = syn::parse_file(text).ok()?;
    file.items.iter().find_map(|item| match item {
        syn::Item::Enum(found) if found.ident == name => {
            Some(found.variants.iter().map(|v| v.ident.to_string()).collect())
        }
        _ => None,
    })
}

fn sources(root: &Path, shell: &Shell) -> Result<String> {
    let mut all = String::new();
    for folder in shell.sources {
        for file in files_under(&root.join(folder), shell.ending)? {
            all.push_str(&code(&fs::read_to_string(file)?));
        }
    }
    Ok(all)
}

/// The lines that are no comments.
fn code(text: &str) -> String {
    let lines = text.lines().map(str::trim);
    let code =
        lines.filter(|line| !line.starts_with("//") && !line.starts_with('*') && !line.starts_with("/*"));
    code.fold(String::new(), |all, line| all + line + "\n")
}

/// Whether a name stands there as a whole, to make something and not to ask whether it is one.
fn holds(code: &str, name: &str) -> bool {
    code.match_indices(name).any(|(at, _)| {
        let (before, after) = code.split_at(at);
        let whole = !after
            .get(name.len()..)
            .and_then(|rest| rest.chars().next())
            .is_some_and(|c| c.is_alphanumeric() || c == '_');
        whole && !before.ends_with("is ")
    })
}

fn lower(case: &str) -> String {
    let mut letters = case.chars();
    letters
        .next()
        .map(|first| first.to_lowercase().chain(letters).collect())
        .unwrap_or_default()
}

/// The cases of `Action` that are made in what was visited: not those that are only matched or compared, and not in tests.
#[derive(Default)]
struct Made(BTreeSet<String>);

impl Made {
    fn take(&mut self, path: &syn::Path) {
        let mut last = path.segments.iter().rev();
        if let (Some(case), Some(of)) = (last.next(), last.next())
            && of.ident == "Action"
        {
            self.0.insert(case.ident.to_string());
        }
    }
}

impl<'ast> Visit<'ast> for Made {
    fn visit_item_mod(&mut self, module: &'ast syn::ItemMod) {
        let test = module.attrs.iter().any(|a| a.path().is_ident("cfg"));
        if !test {
            syn::visit::visit_item_mod(self, module);
        }
    }

    fn visit_pat(&mut self, _: &'ast syn::Pat) {}

    fn visit_expr_binary(&mut self, compared: &'ast syn::ExprBinary) {
        if !matches!(compared.op, syn::BinOp::Eq(_) | syn::BinOp::Ne(_)) {
            syn::visit::visit_expr_binary(self, compared);
        }
    }

    fn visit_expr_path(&mut self, made: &'ast syn::ExprPath) {
        self.take(&made.path);
    }

    fn visit_expr_struct(&mut self, made: &'ast syn::ExprStruct) {
        self.take(&made.path);
        syn::visit::visit_expr_struct(self, made);
    }

    fn visit_macro(&mut self, called: &'ast syn::Macro) {
        if called.path.is_ident("matches") {
            return;
        }
        let words = called.tokens.to_string();
        for (_, after) in words
            .match_indices("Action ::")
            .map(|(at, found)| words.split_at(at + found.len()))
        {
            let case: String = after
                .trim_start()
                .chars()
                .take_while(|c| c.is_alphanumeric())
                .collect();
            self.0.insert(case);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn made(text: &str) -> Vec<String> {
        let mut made = Made::default();
        made.visit_file(&syn::parse_file(text).unwrap());
        made.0.into_iter().collect()
    }

    #[test]
    fn what_is_made_counts_and_what_is_matched_does_not() {
        let text = "fn f(a: &Action) -> Button {
            if *a == Action::Undo { return b(Action::Back); }
            match a { Action::Tick => b(Action::Go { to }), _ => all(vec![Action::Stroke]) }
        }
        #[cfg(test)] mod tests { fn t() { act(Action::LetGo); } }";
        assert_eq!(made(text), ["Back", "Go", "Stroke"]);
    }

    #[test]
    fn the_cases_of_an_enum_are_found() {
        let text = "enum Other { A } pub enum Body { Jobs { jobs: X }, YesNo }";
        assert_eq!(
            enum_cases(text, "Body"),
            Some(vec!["Jobs".into(), "YesNo".into()])
        );
        assert_eq!(enum_cases(text, "Screen"), None);
    }

    #[test]
    fn a_case_that_a_shell_lacks_is_named() {
        let (kotlin, swift) = (SHELLS[0].takes, SHELLS[1].takes);
        let cases = ["Jobs".to_owned(), "YesNo".to_owned()];
        let text = code("// is Body.YesNo ->\nis Body.Jobs -> x\ncase .jobs(let jobs): y\n");
        assert_eq!(untaken(&text, &cases, |case| kotlin("Body", case)), ["YesNo"]);
        assert_eq!(untaken(&text, &cases, |case| swift("Body", case)), ["YesNo"]);
    }

    #[test]
    fn an_action_is_made_by_its_whole_name() {
        assert!(holds("send(Action.tick)", "Action.tick"));
        assert!(!holds("send(Action.tickle)", "Action.tick"));
        assert!(!holds("if (action is Action.Tick) x", "Action.Tick"));
    }
}
