//! Bad input and bad moments, through the companion as a shell meets them: design.md section 11, a file a row.

mod hands;
mod interrupted;
mod names;
mod numbers;
mod photos;
