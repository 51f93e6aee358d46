"""Cut the site's two faces out of their originals: the characters that the pages use, from regular to semibold, as WOFF2.

Needed only when a page uses a sign that no file holds yet (`tests/browser/every-page.spec.ts` says so): add it below and run

    python3 scripts/fonts.py <folder of source-serif 4.5.1> <folder of source-sans 3.52.0>

with fontTools and brotli installed; both folders are the packages of these names, unpacked (`npm pack source-serif`).
The licence reserves the names of the originals, so what is cut here carries names of its own. Writes static/fonts/ and
src/site/fonts/faces.json.
"""

import io
import json
import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont
from fontTools.varLib import instancer

# What nearly every page needs. The rest is asked for by the pages that show it.
CORE = "".join(chr(code) for code in range(0x20, 0x7F)) + "\u00a0°±²³µ·¹×÷½¼¾–—‘’“”…−≤≥⅛⅜⅝⅞⁄→√⁰⁴⁵⁶⁷⁸⁹⁻₁₂✗áéöøü«»☐▸▾‐•"
LETTERS = "".join(chr(code) for code in [*range(0xA1, 0x180), 0x218, 0x219, 0x21A, 0x21B])
SIGNS = "\u02c6\u02dc\u02c9\u2009\u200a‑―‚„†‡‰′″‹›€™←↑↓≈≠∞⅓⅔⅕⅖⅗⅘⅙⅚⁺₀₃₄₅₆₇₈₉ΔΩαβγδεζηθικλμνξπρστφχψω∂∑✓"
PARTS = {
    "": CORE,
    "-letters": "".join(each for each in LETTERS if each not in CORE),
    "-signs": SIGNS,
}
FEATURES = ["kern", "liga", "tnum", "lnum", "mark", "ccmp", "locl"]

root = Path(__file__).resolve().parent.parent
serif, sans = (Path(each) for each in sys.argv[1:3])
WEIGHTS = (400, 600)
FACES = [
    ("book", "Kerf Book", "normal", serif / "VAR/SourceSerif4Variable-Roman.ttf", {"opsz": 16, "wght": WEIGHTS}),
    ("book-italic", "Kerf Book", "italic", serif / "VAR/SourceSerif4Variable-Italic.ttf", {"opsz": 16, "wght": 400}),
    ("sans", "Kerf Sans", "normal", sans / "VF/SourceSans3VF-Upright.ttf", {"wght": WEIGHTS}),
    ("sans-italic", "Kerf Sans", "italic", sans / "VF/SourceSans3VF-Italic.ttf", {"wght": 400}),
]


def cut(source: Path, characters: str) -> TTFont:
    """The original with the glyphs of these characters alone."""
    font = TTFont(source)
    options = subset.Options()
    options.layout_features = FEATURES
    options.name_IDs = [0, 13, 14]
    options.hinting = False
    options.notdef_outline = True
    options.drop_tables += ["STAT"]
    subsetter = subset.Subsetter(options)
    subsetter.populate(text=characters)
    subsetter.subset(font)
    kept = io.BytesIO()
    font.save(kept)
    kept.seek(0)
    return TTFont(kept)


def name(font: TTFont, family: str, style: str) -> None:
    """Give the font its own names; copyright and licence stay as they are."""
    postscript = f"{family.replace(' ', '')}-{style.capitalize()}"
    for number, text in {1: family, 2: style.capitalize(), 3: postscript, 4: f"{family} {style}", 6: postscript}.items():
        font["name"].setName(text, number, 3, 1, 0x409)


def ranges(codes: list[int]) -> str:
    """Code points as a CSS unicode-range."""
    runs: list[list[int]] = []
    for code in sorted(codes):
        if runs and code == runs[-1][1] + 1:
            runs[-1][1] = code
        else:
            runs.append([code, code])
    return ",".join(f"U+{first:X}" if first == last else f"U+{first:X}-{last:X}" for first, last in runs)


def main() -> None:
    faces = []
    for base, family, style, source, limits in FACES:
        for part, characters in PARTS.items():
            font = instancer.instantiateVariableFont(cut(source, characters), limits)
            name(font, family, style)
            font.flavor = "woff2"
            path = root / "static/fonts" / f"kerf-{base}{part}.woff2"
            font.save(path)
            head, hhea = font["head"], font["hhea"]
            faces.append(
                {
                    "family": family,
                    "style": style,
                    "weight": "400" if limits["wght"] == 400 else "400 700",
                    "file": path.name,
                    "bytes": path.stat().st_size,
                    "range": ranges([code for code in font.getBestCmap() if chr(code) in characters]),
                }
            )
            print(path.name, path.stat().st_size, hhea.ascent / head.unitsPerEm, hhea.descent / head.unitsPerEm, hhea.lineGap)
    (root / "src/site/fonts/faces.json").write_text(json.dumps(faces, indent=2) + "\n")


main()
