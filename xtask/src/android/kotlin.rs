//! The Kotlin compiler with the Compose plugin, run as a program: one module a run.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

use crate::fetch::{Catalogue, Fetched};
use crate::toolchain::{Fingerprint, Places, Step};

/// A short-lived program: the serial collector and the first compiler only, which halves its time.
pub const QUICK_JAVA: [&str; 2] = ["-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"];

/// The compiler.
#[derive(Debug, Clone)]
pub struct Kotlin {
    class_path: OsString,
    plugin: PathBuf,
    archive: PathBuf,
    target: String,
    print: Fingerprint,
}

/// One module to compile.
#[derive(Debug)]
pub struct Module<'a> {
    /// What the step is called.
    pub name: &'static str,
    /// Its sources.
    pub sources: Vec<PathBuf>,
    /// What it may use.
    pub class_path: Vec<PathBuf>,
    /// Changes with what it may use.
    pub uses: Vec<&'a Fingerprint>,
    /// Modules whose internals it may see: those it tests.
    pub friends: Vec<PathBuf>,
    /// The jar to write.
    pub jar: PathBuf,
}

impl Kotlin {
    /// The compiler out of the lock file's section `kotlinc`.
    ///
    /// # Errors
    /// When the section lacks it.
    pub fn new(places: &Places, catalogue: &Catalogue, fetched: &Fetched) -> Result<Self> {
        let plugin = fetched.one("kotlinc", "kotlin-compose-compiler-plugin")?;
        let jars: Vec<_> = fetched
            .section("kotlinc")?
            .into_iter()
            .filter(|jar| *jar != plugin)
            .collect();
        Ok(Self {
            class_path: std::env::join_paths(jars)?,
            plugin,
            archive: places.product("kotlinc.jsa"),
            target: catalogue.version("jvmTarget")?.to_owned(),
            print: fetched.print.clone(),
        })
    }

    /// Compiles a module unless it is up to date.
    ///
    /// # Errors
    /// The compiler's, which it has printed by then.
    pub fn compile(&self, places: &Places, module: Module<'_>) -> Result<Fingerprint> {
        self.compile_with(places, module, &["-Werror"])
    }

    /// Compiles generated sources, whose warnings are nobody's to mend.
    ///
    /// # Errors
    /// The compiler's, which it has printed by then.
    pub fn compile_generated(&self, places: &Places, module: Module<'_>) -> Result<Fingerprint> {
        self.compile_with(places, module, &["-nowarn"])
    }

    fn compile_with(&self, places: &Places, module: Module<'_>, options: &[&str]) -> Result<Fingerprint> {
        let mut step = Step::new(places, module.name)
            .word(&self.print)
            .word(&self.target)
            .files(&module.sources)?;
        for print in &module.uses {
            step = step.word(print);
        }
        step.makes(&module.jar).run(|| {
            if let Some(folder) = module.jar.parent() {
                std::fs::create_dir_all(folder)?;
            }
            let mut java = Command::new("java");
            // Making the archive warns of every class that it can't hold.
            java.args(QUICK_JAVA)
                .arg("-Xlog:disable")
                .arg(self.sharing())
                .arg("-cp")
                .arg(&self.class_path);
            java.args([
                "org.jetbrains.kotlin.cli.jvm.K2JVMCompiler",
                "-no-stdlib",
                "-no-reflect",
            ]);
            java.args(options).args(["-jvm-target", &self.target]);
            java.arg(option("-Xplugin=", &self.plugin));
            if !module.friends.is_empty() {
                let friends: Vec<_> = module.friends.iter().map(|f| f.display().to_string()).collect();
                java.arg(format!("-Xfriend-paths={}", friends.join(",")));
            }
            java.arg("-classpath")
                .arg(std::env::join_paths(&module.class_path)?);
            java.arg("-d").arg(&module.jar).args(&module.sources);
            // The compiler has said what is wrong; its command line would only hide that.
            let status = java.status().context("can't run java: is a JDK installed?")?;
            if status.success() {
                Ok(())
            } else {
                bail!("the Kotlin compiler found errors")
            }
        })
    }

    /// The compiler's own classes, parsed once and then mapped from an archive: a third off each later run.
    fn sharing(&self) -> OsString {
        let flag = if self.archive.exists() {
            "-XX:SharedArchiveFile="
        } else {
            "-XX:ArchiveClassesAtExit="
        };
        option(flag, &self.archive)
    }
}

fn option(flag: &str, value: impl AsRef<Path>) -> OsString {
    let mut text = OsString::from(flag);
    text.push(value.as_ref());
    text
}
