//! What leaves the program: the papers, the JSON and tables, and the command line.

mod command_line;
mod papers;
