//! Where each part stands: columns and rows, so that no line crosses another in a tree.
//!
//! Each side is laid out from its root downwards. The deepest child of a part continues its column; the others get
//! columns to the right, the nearest that is free over their rows. Working from the straight child outwards keeps the
//! lines of a tree apart. The electric side stands to the right, shifted so that the coil is level with its valve.

use std::collections::HashMap;

use super::{CircuitMap, PartKind, Side};

/// A place on the grid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) struct Cell {
    pub(crate) column: usize,
    pub(crate) row: usize,
}

/// The grid with a cell for each part, in the order of the parts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Grid {
    pub(crate) cells: Vec<Cell>,
    pub(crate) columns: usize,
    pub(crate) rows: usize,
}

/// Gives every part of the map a cell of its own.
pub(crate) fn place(map: &CircuitMap) -> Grid {
    let index: HashMap<&str, usize> = map
        .parts
        .iter()
        .enumerate()
        .map(|(i, p)| (p.id.as_str(), i))
        .collect();
    let links: Vec<(usize, usize)> = map
        .links
        .iter()
        .filter_map(|l| Some((*index.get(l.from.as_str())?, *index.get(l.to.as_str())?)))
        .filter(|(from, to)| from != to)
        .collect();
    let mut cells = vec![Cell { column: 0, row: 0 }; map.parts.len()];
    let vacuum = side(map, Side::Vacuum, &links, &mut cells);
    let electric = side(map, Side::Electric, &links, &mut cells);
    join(map, &links, &vacuum, &electric, &mut cells);
    let columns = cells.iter().map(|c| c.column + 1).max().unwrap_or(1);
    let rows = cells.iter().map(|c| c.row + 1).max().unwrap_or(1);
    Grid { cells, columns, rows }
}

/// Lays out one side by itself and returns its parts.
fn side(map: &CircuitMap, side: Side, links: &[(usize, usize)], cells: &mut [Cell]) -> Vec<usize> {
    let parts: Vec<usize> = (0..map.parts.len())
        .filter(|i| map.parts[*i].kind.side() == side)
        .collect();
    let inner: Vec<(usize, usize)> = links
        .iter()
        .copied()
        .filter(|(a, b)| parts.contains(a) && parts.contains(b))
        .collect();
    let mut tree = Tree::over(&parts, &inner, cells.len());
    let roots: Vec<usize> = parts
        .iter()
        .copied()
        .filter(|p| tree.parent[*p].is_none())
        .collect();
    for root in roots {
        let column = tree.free_column(0, 0, tree.end_row(root));
        tree.settle(root, column, cells);
    }
    parts
}

/// One side as a tree: each part hangs under the part that feeds it at the greatest depth.
struct Tree {
    parent: Vec<Option<usize>>,
    children: Vec<Vec<usize>>,
    row: Vec<usize>,
    taken: Vec<(usize, usize, usize)>,
}

impl Tree {
    fn over(parts: &[usize], links: &[(usize, usize)], len: usize) -> Self {
        let mut row = vec![0; len];
        let mut parent = vec![None; len];
        // Longest path; a loop in the links can only push a part down as far as there are parts.
        for _ in 0..parts.len() {
            for &(from, to) in links {
                if row[to] < row[from] + 1 && row[from] + 1 < parts.len() {
                    row[to] = row[from] + 1;
                }
            }
        }
        for &(from, to) in links {
            if row[to] == row[from] + 1 && parent[to].is_none() {
                parent[to] = Some(from);
            }
        }
        let mut children = vec![Vec::new(); len];
        for part in parts {
            if let Some(above) = parent[*part] {
                children[above].push(*part);
            }
        }
        Self {
            parent,
            children,
            row,
            taken: Vec::new(),
        }
    }

    /// The last row of the straight line that starts at a part.
    fn end_row(&self, part: usize) -> usize {
        self.straight(part)
            .map_or(self.row[part], |child| self.end_row(child))
    }

    /// How deep the tree under a part goes.
    fn depth(&self, part: usize) -> usize {
        self.children[part]
            .iter()
            .map(|c| self.depth(*c))
            .max()
            .unwrap_or(self.row[part])
    }

    /// The child that continues the part's column: the deepest, the first among equals.
    fn straight(&self, part: usize) -> Option<usize> {
        let children = &self.children[part];
        let deepest = children.iter().map(|c| self.depth(*c)).max()?;
        children.iter().copied().find(|c| self.depth(*c) == deepest)
    }

    /// The leftmost column from `least` on that is free over the rows.
    fn free_column(&self, least: usize, from: usize, to: usize) -> usize {
        (least..)
            .find(|c| !self.taken.iter().any(|t| t.0 == *c && t.1 <= to && from <= t.2))
            .unwrap_or(least)
    }

    fn settle(&mut self, part: usize, column: usize, cells: &mut [Cell]) {
        let row = self.row[part];
        cells[part] = Cell { column, row };
        self.taken.push((column, row, row));
        let straight = self.straight(part);
        if let Some(child) = straight {
            self.settle(child, column, cells);
        }
        let others: Vec<usize> = self.children[part]
            .iter()
            .copied()
            .filter(|c| Some(*c) != straight)
            .collect();
        for child in others {
            let column = self.free_column(column + 1, self.row[child], self.end_row(child));
            self.settle(child, column, cells);
        }
    }
}

/// Puts the electric side to the right of the vacuum side, its first coil (or connector) level with the first valve.
fn join(
    map: &CircuitMap,
    links: &[(usize, usize)],
    vacuum: &[usize],
    electric: &[usize],
    cells: &mut [Cell],
) {
    if vacuum.is_empty() || electric.is_empty() {
        return;
    }
    let first = |among: &[usize], kind: PartKind| among.iter().copied().find(|i| map.parts[*i].kind == kind);
    let linked = links
        .iter()
        .find_map(|&(a, b)| match (vacuum.contains(&a), vacuum.contains(&b)) {
            (true, false) => Some((a, b)),
            (false, true) => Some((b, a)),
            _ => None,
        });
    let at_valve = first(electric, PartKind::Coil).or_else(|| first(electric, PartKind::Connector));
    let meeting = linked.or_else(|| first(vacuum, PartKind::Valve).zip(at_valve));
    if let Some((valve, coil)) = meeting {
        let (upper, lower) = (cells[valve].row, cells[coil].row);
        let (moved, by) = if upper >= lower {
            (electric, upper - lower)
        } else {
            (vacuum, lower - upper)
        };
        for part in moved {
            cells[*part].row += by;
        }
    }
    let rows = |among: &[usize], cells: &[Cell]| {
        let rows = among.iter().map(|i| cells[*i].row);
        (rows.clone().min().unwrap_or(0), rows.max().unwrap_or(0))
    };
    let (top, bottom) = rows(electric, cells);
    let beside = vacuum
        .iter()
        .filter(|i| (top..=bottom).contains(&cells[**i].row))
        .map(|i| cells[*i].column + 1)
        .max();
    let shift = beside.unwrap_or(0);
    for part in electric {
        cells[*part].column += shift;
    }
}
