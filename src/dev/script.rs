//! JavaScript without what only people read.

use oxc_allocator::Allocator;
use oxc_codegen::{Codegen, CodegenOptions};
use oxc_parser::Parser;
use oxc_span::SourceType;

use crate::run::Outcome;

/// A module or a service worker that does the same in fewer bytes: without comments and spaces.
/// Names stay as they are.
pub fn short(name: &str, script: &str) -> Outcome<String> {
    let allocator = Allocator::default();
    let parsed = Parser::new(&allocator, script, SourceType::mjs()).parse();
    if let Some(error) = parsed.diagnostics.first() {
        return Err(format!("{name} is no JavaScript: {error}. Mend it in public."));
    }
    Ok(Codegen::new().with_options(CodegenOptions::minify()).build(&parsed.program).code)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn comments_and_spaces_go_and_what_looks_like_them_stays() {
        let script = "// One.\nimport { a } from \"./a.js\"; /* Two. */\nconst b = `\n// kept ${ a }`;\n/\\/\\/ kept/.test(b);\n";
        let kept = "import{a}from\"./a.js\";const b=`\n// kept ${a}`;/\\/\\/ kept/.test(b);";
        assert_eq!(short("a.js", script), Ok(kept.to_owned()));
    }

    #[test]
    fn what_is_no_script_is_named() {
        assert_eq!(
            short("a.js", "const = 1;"),
            Err("a.js is no JavaScript: Unexpected token. Mend it in public.".to_owned())
        );
    }
}
