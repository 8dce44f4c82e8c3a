//! Writes sample scenes as PNG, day and night, and sample reports as PDF, into `target/report-samples` (or the folder
//! given). Everything in them is invented.

use std::error::Error;
use std::path::PathBuf;

use holdfast_report::theme::Theme;
use holdfast_report::{
    Block, Dash, Ends, Item, Paper, PhotoMark, PhotoScene, PhotoShape, Point, Role, Scene, Spot, Stroke,
    band, circuit_map, connector_face, gauge, hold_chart, pages, photo, render_pdf, render_png,
};

#[path = "../tests/layouts/mod.rs"]
mod layouts;
use layouts::{sample_report, samples};

fn main() -> Result<(), Box<dyn Error>> {
    let folder = PathBuf::from(
        std::env::args()
            .nth(1)
            .unwrap_or_else(|| "target/report-samples".into()),
    );
    std::fs::create_dir_all(&folder)?;
    let picture = folder.join("drawn-hose.png");
    std::fs::write(&picture, render_png(&drawn_hose(), Theme::Day, 1_200)?)?;
    let picture = picture.to_str().ok_or("the folder's name is not text")?;

    let marked = PhotoScene {
        alt: "Hose end with test point".into(),
        path: picture.into(),
        width_px: 1_200,
        height_px: 900,
        marks: vec![
            PhotoShape::Ring {
                centre: Spot { x: 0.36, y: 0.4 },
                radius: 0.09,
            }
            .plain(),
            PhotoShape::Arrow {
                from: Spot { x: 0.72, y: 0.75 },
                to: Spot { x: 0.46, y: 0.48 },
            }
            .plain(),
            PhotoShape::Pin {
                at: Spot { x: 0.74, y: 0.42 },
                number: "2".into(),
            }
            .plain(),
            PhotoMark {
                words: "hand pump here".into(),
                ..PhotoShape::TestPoint {
                    at: Spot { x: 0.2, y: 0.8 },
                }
                .plain()
            },
            PhotoMark {
                role: Role::Undecided,
                words: "35 cm".into(),
                ..PhotoShape::Measure {
                    from: Spot { x: 0.5, y: 0.1 },
                    to: Spot { x: 0.9, y: 0.2 },
                }
                .plain()
            },
            PhotoShape::Blur {
                from: Spot { x: 0.02, y: 0.05 },
                to: Spot { x: 0.2, y: 0.2 },
            }
            .plain(),
            PhotoMark {
                words: "split, 12 mm long".into(),
                ..PhotoShape::Words {
                    at: Spot { x: 0.55, y: 0.93 },
                }
                .plain()
            },
        ],
        grips: vec![Spot { x: 0.5, y: 0.1 }, Spot { x: 0.9, y: 0.2 }],
    };
    let mut scenes: Vec<(String, Scene)> = vec![
        ("map-job".into(), circuit_map(&samples::map_in_a_job())),
        ("map-test".into(), circuit_map(&samples::map_under_test())),
        ("connector".into(), connector_face(&samples::connector())),
        ("gauge".into(), gauge(&samples::dial())),
        ("gauge-bar".into(), gauge(&samples::dial_in_bar())),
        ("chart".into(), hold_chart(&samples::chart())),
        ("chart-before-after".into(), hold_chart(&samples::before_after())),
        ("chart-trace".into(), hold_chart(&samples::trace())),
        ("band".into(), band(&samples::volts())),
        ("band-low".into(), band(&samples::volts_loaded())),
        ("band-open".into(), band(&samples::coil_open())),
        ("photo".into(), photo(&marked)),
    ];
    for (name, chains) in layouts::LAYOUTS {
        let number = name.split(' ').next().unwrap_or_default();
        scenes.push((format!("layout-{number:0>2}"), circuit_map(&layouts::map(chains))));
    }
    for (name, scene) in scenes {
        for (suffix, theme) in [("day", Theme::Day), ("night", Theme::Night)] {
            std::fs::write(
                folder.join(format!("{name}-{suffix}.png")),
                render_png(&scene, theme, 720)?,
            )?;
        }
    }
    let report = sample_report::report(34, Some(picture));
    for (name, paper) in [("report-a4", Paper::A4), ("report-letter", Paper::Letter)] {
        std::fs::write(folder.join(format!("{name}.pdf")), render_pdf(&report, paper)?)?;
    }
    // Names and notes as they really come: other scripts, control characters, no spaces, far too long.
    let mut odd = sample_report::report(90, None);
    odd.facts[5].value =
        "\u{202e}Ahmad \u{5d0}\u{5d1} 山田 🚗\u{7} Łukasz Ødegård Παπαδόπουλος Щербаков".into();
    odd.customer.push(Block::Text("note ".repeat(2_000)));
    odd.evidence.blocks.push(Block::Text("x".repeat(3_000)));
    std::fs::write(folder.join("report-odd.pdf"), render_pdf(&odd, Paper::A4)?)?;
    if let Some(first) = pages(&report, Paper::A4).first() {
        std::fs::write(
            folder.join("report-preview.png"),
            render_png(&first.scene, Theme::Day, 900)?,
        )?;
    }
    Ok(())
}

/// Stands in for a photo: a bent hose on a nipple, drawn.
fn drawn_hose() -> Scene {
    let p = |x: f32, y: f32| Point { x, y };
    let bend = |offset: f32| -> Vec<Point> {
        (0_u8..=40)
            .map(|i| {
                let t = f32::from(i) / 40.0;
                p(40.0 + 300.0 * t, 260.0 - 170.0 * (t * 1.9).sin() + offset)
            })
            .collect()
    };
    let line = |points: Vec<Point>, width: f32, role: Role| Item::Path {
        points,
        ends: Ends::Open,
        stroke: Some(Stroke {
            width,
            role,
            dash: Dash::Solid,
        }),
        fill: None,
    };
    let block = |x: f32, y: f32, width: f32, height: f32, role: Role| Item::Path {
        points: vec![
            p(x, y),
            p(x + width, y),
            p(x + width, y + height),
            p(x, y + height),
        ],
        ends: Ends::Closed,
        stroke: None,
        fill: Some(role),
    };
    Scene {
        width: 400.0,
        height: 300.0,
        alt: "A hose drawn for an example".into(),
        items: vec![
            block(0.0, 0.0, 400.0, 300.0, Role::Line),
            block(0.0, 200.0, 400.0, 100.0, Role::QuietInk),
            block(285.0, 90.0, 90.0, 140.0, Role::Line),
            line(bend(0.0), 30.0, Role::Ink),
            line(bend(-6.0), 5.0, Role::QuietInk),
            line(vec![p(128.0, 118.0), p(150.0, 108.0)], 3.0, Role::Paper),
        ],
    }
}
