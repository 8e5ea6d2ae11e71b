//! Photos on the papers: pixels, upright, and nothing that tells where, when or with what they were taken.
//!
//! The segments of a JPEG are those of ITU-T T.81, annex B; the tags of EXIF those of CIPA DC-008 (Exif 2.32); both
//! from memory. The PDF is taken apart by another library than wrote it.

use std::io::Cursor;
use std::path::Path;

use gapwright::assess::{Assessment, assess};
use gapwright::job::{Catalog, Job, Logo, file};
use gapwright::papers::{Paper, PaperWords, Papers, Templates};
use gapwright::surface::Photo;
use image::{DynamicImage, ImageFormat, Rgb, RgbImage};
use pdf_extract::{Document, Object};

/// What cameras write beside the picture: each must be gone.
const SECRETS: [&[u8]; 6] =
    [b"Secret Camera", b"Secret Comment", b"Secret XMP", b"Secret IPTC", b"Secret Thumbnail", &GPS_SECONDS];
/// Seconds of a latitude, an odd fraction as EXIF keeps it.
const GPS_SECONDS: [u8; 8] = [0x12, 0x6e, 0x5a, 0xd3, 0x00, 0x0f, 0x42, 0x41];

/// A tag of EXIF: number, type (2 text, 3 short, 4 long, 5 rational), count, and value or place of it.
fn tag(number: u16, kind: u16, count: u32, value: [u8; 4]) -> Vec<u8> {
    [&number.to_be_bytes()[..], &kind.to_be_bytes(), &count.to_be_bytes(), &value].concat()
}

/// EXIF as a phone writes it that was held on its side: orientation 6, make, a place, a thumbnail.
fn exif() -> Vec<u8> {
    let directory = |tags: Vec<Vec<u8>>, next: u32| {
        let count = u16::try_from(tags.len()).unwrap();
        [&count.to_be_bytes()[..], &tags.concat(), &next.to_be_bytes()].concat()
    };
    let place = |at: u32| at.to_be_bytes();
    // Header 8, main directory 2 + 3 * 12 + 4 = 42 bytes, so what follows starts at 50.
    let (make, gps, seconds, second) = (50, 64, 94, 118);
    let mut made = b"Exif\0\0".to_vec();
    made.extend(b"MM\0\x2a\0\0\0\x08");
    let main =
        vec![tag(0x010f, 2, 14, place(make)), tag(0x0112, 3, 1, [0, 6, 0, 0]), tag(0x8825, 4, 1, place(gps))];
    made.extend(directory(main, second));
    made.extend(b"Secret Camera\0");
    made.extend(directory(vec![tag(1, 2, 2, *b"N\0\0\0"), tag(2, 5, 3, place(seconds))], 0));
    made.extend([0, 0, 0, 47, 0, 0, 0, 1, 0, 0, 0, 31, 0, 0, 0, 1]);
    made.extend(GPS_SECONDS);
    let thumbnail = b"\xff\xd8Secret Thumbnail\xff\xd9";
    let length = u32::try_from(thumbnail.len()).unwrap().to_be_bytes();
    made.extend(directory(vec![tag(0x0201, 4, 1, place(second + 30)), tag(0x0202, 4, 1, length)], 0));
    made.extend(thumbnail);
    made
}

/// A segment of a JPEG.
fn segment(marker: u8, bytes: &[u8]) -> Vec<u8> {
    let length = u16::try_from(bytes.len() + 2).unwrap();
    [&[0xff, marker][..], &length.to_be_bytes(), bytes].concat()
}

/// A JPEG as it comes out of a camera: left half red, right half blue, to be turned by a quarter to the right.
fn from_camera(width: u32, height: u32) -> Vec<u8> {
    let color = |x: u32, _: u32| if x < width / 2 { Rgb([220, 20, 20]) } else { Rgb([20, 20, 220]) };
    let mut plain = Cursor::new(Vec::new());
    DynamicImage::from(RgbImage::from_fn(width, height, color))
        .write_to(&mut plain, ImageFormat::Jpeg)
        .unwrap();
    let plain = plain.into_inner();
    let told = [
        segment(0xe1, &exif()),
        segment(
            0xe1,
            b"http://ns.adobe.com/xap/1.0/\0<x:xmpmeta xmlns:x='adobe:ns:meta/'>Secret XMP</x:xmpmeta>",
        ),
        segment(0xed, b"Photoshop 3.0\08BIM\x04\x04\0\0\0\0\0\x10\x1c\x02\x5a\0\x0bSecret IPTC"),
        segment(0xfe, b"Secret Comment"),
    ];
    [&plain[..2], &told.concat(), &plain[2..]].concat()
}

fn holds(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

/// The markers of a JPEG's segments up to its first scan.
fn markers(jpeg: &[u8]) -> Vec<u8> {
    let mut found = Vec::new();
    let mut at = 2;
    while jpeg[at] == 0xff && jpeg[at + 1] != 0xda {
        found.push(jpeg[at + 1]);
        at += 2 + usize::from(u16::from_be_bytes([jpeg[at + 2], jpeg[at + 3]]));
    }
    found
}

/// A job with photos pinned on a joint that was measured, and the assessment of it.
fn pinned(files: &[&str]) -> Assessment {
    let mut job = file::read(include_str!("../../examples/tea_room.ron")).unwrap().job;
    let found = assess(job.clone(), Catalog::built_in());
    let reading = &job.survey.gaps[0];
    let surface = job.surfaces.iter().position(|surface| surface.name == reading.surface).unwrap();
    let joint = found.layouts[surface].joints.iter().find(|joint| joint.label == reading.joint).unwrap();
    let middle = joint.middle();
    let at = gapwright::surface::Point(
        gapwright::measure::Length::m(middle.x + 0.01),
        gapwright::measure::Length::m(middle.y),
    );
    job.surfaces[surface].photos = files
        .iter()
        .map(|file| Photo { file: (*file).to_owned(), at, note: "beside the window".to_owned() })
        .collect();
    assess(job, Catalog::built_in())
}

fn papers_with(found: &Assessment, folder: &Path) -> Papers {
    Papers::with(found, Templates::default(), &PaperWords::us_english(&found.job))
        .with_photos_in(Some(folder.to_owned()))
}

/// The JPEGs within a PDF as they are stored, by another library.
fn jpegs(pdf: &[u8]) -> Vec<Vec<u8>> {
    let document = Document::load_mem(pdf).unwrap();
    let streams = document.objects.values().filter_map(|object| match object {
        Object::Stream(stream) => Some(stream),
        _ => None,
    });
    let is_jpeg = |stream: &&pdf_extract::Stream| {
        stream.filters().is_ok_and(|filters| filters.iter().any(|filter| *filter == b"DCTDecode"))
    };
    streams.filter(is_jpeg).map(|stream| stream.content.clone()).collect()
}

#[test]
fn a_photo_on_the_evidence_sheet_is_upright_and_tells_nothing_but_its_pixels() {
    let folder = tempfile::tempdir().unwrap();
    let taken = from_camera(2400, 1200);
    // The file tells all of it, and another library reads the turn, or the test proves nothing.
    assert!(SECRETS.iter().all(|secret| holds(&taken, secret)));
    assert_eq!(markers(&taken)[..4], [0xe1, 0xe1, 0xed, 0xfe]);
    std::fs::write(folder.path().join("001.jpg"), &taken).unwrap();

    let found = pinned(&["001.jpg"]);
    let papers = papers_with(&found, folder.path());
    let sheet = papers.typeset(Paper::EvidenceSheet).unwrap();
    let pdf = sheet.pdf().unwrap();
    let printed = jpegs(&pdf);
    assert_eq!(printed.len(), 1, "the photo is on the sheet");
    let photo = image::load_from_memory(&printed[0]).unwrap().into_rgb8();
    assert_eq!((photo.width(), photo.height()), (800, 1600), "turned, then no longer than 1600");
    let (top, bottom) = (photo.get_pixel(400, 200), photo.get_pixel(400, 1400));
    assert!(top[0] > 180 && top[2] < 60 && bottom[2] > 180 && bottom[0] < 60, "{top:?} above {bottom:?}");
    let told: Vec<u8> = markers(&printed[0]).into_iter().filter(|marker| *marker > 0xe0).collect();
    assert_eq!(told, [] as [u8; 0], "no segment of an application and no comment");

    let document = Document::load_mem(&pdf).unwrap();
    let mut stored = pdf;
    for object in document.objects.values() {
        if let Object::Stream(stream) = object {
            stored.extend(stream.decompressed_content().unwrap_or_else(|_plain| stream.content.clone()));
        }
    }
    stored.extend(papers.owner_page().unwrap().html.into_bytes());
    for secret in SECRETS {
        assert!(!holds(&stored, secret), "{}", String::from_utf8_lossy(secret));
    }
    let reading = &found.job.survey.gaps[0];
    let text: String = sheet.text().split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains(&format!("Joint {}:", reading.joint)), "its reading stands beside it: {text}");
    assert!(text.contains("beside the window"), "{text}");
}

#[test]
fn a_photo_that_cant_be_had_is_told_with_the_way_out_and_the_others_are_printed() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("good.jpg"), from_camera(60, 40)).unwrap();
    let mut cut = from_camera(60, 40);
    cut.truncate(120);
    std::fs::write(folder.path().join("cut.jpg"), cut).unwrap();
    std::fs::write(folder.path().join("text.png"), "no picture").unwrap();
    let outside = tempfile::tempdir().unwrap();
    std::fs::write(outside.path().join("secret.jpg"), from_camera(60, 40)).unwrap();
    let way_out = format!("../{}/secret.jpg", outside.path().file_name().unwrap().to_string_lossy());

    let found = pinned(&["cut.jpg", "gone.jpg", &way_out, "text.png", "good.jpg"]);
    let sheet = papers_with(&found, folder.path()).typeset(Paper::EvidenceSheet).unwrap();
    assert!(sheet.fault().is_none());
    assert_eq!(
        jpegs(&sheet.pdf().unwrap()).len(),
        1,
        "only the good one, and none from outside of the folder"
    );
    let text: String = sheet.text().split_whitespace().collect::<Vec<_>>().join(" ");
    for line in [
        "“cut.jpg” is damaged",
        "“gone.jpg” isn’t in the job’s photo folder",
        "secret.jpg” isn’t the name of a photo",
        "“text.png” is damaged, or not a JPEG or PNG",
    ] {
        assert!(text.contains(line), "{line}: {text}");
    }
    let place = folder.path().to_string_lossy();
    assert!(!text.contains(&*place), "where the folder lies is not told");
}

#[test]
fn a_sheet_of_a_job_whose_folder_nobody_named_lists_its_photos() {
    let found = pinned(&["001.jpg"]);
    let sheet = Papers::new(&found).typeset(Paper::EvidenceSheet).unwrap();
    assert!(sheet.text().contains("001.jpg") && jpegs(&sheet.pdf().unwrap()).is_empty());
}

#[test]
fn the_command_line_finds_the_photos_beside_the_job() {
    let folder = tempfile::tempdir().unwrap();
    let job = folder.path().join("room.ron");
    std::fs::create_dir(folder.path().join("room.photos")).unwrap();
    std::fs::write(folder.path().join("room.photos/001.jpg"), from_camera(60, 40)).unwrap();
    file::save(&pinned(&["001.jpg"]).job, &job).unwrap();
    let out = folder.path().join("out");
    let run = std::process::Command::new(env!("CARGO_BIN_EXE_gapwright"))
        .args(["papers", &job.to_string_lossy(), "--draft", "--out", &out.to_string_lossy()])
        .output()
        .unwrap();
    let pdf = std::fs::read(out.join("claim/evidence-sheet.pdf"))
        .unwrap_or_else(|error| panic!("{error}: {}", String::from_utf8_lossy(&run.stderr)));
    assert_eq!(jpegs(&pdf).len(), 1);
}

#[test]
fn a_logo_is_upright_and_tells_nothing_but_its_pixels() {
    let logo = Logo::new(&from_camera(400, 200)).unwrap();
    let mut job: Job = pinned(&[]).job.as_ref().clone();
    job.contractor.logo = Some(logo.clone());
    let found = assess(job, Catalog::built_in());
    let papers = Papers::new(&found);
    let mut stored = papers.owner_page().unwrap().html.into_bytes();
    stored.extend(papers.typeset(Paper::Letter).unwrap().pdf().unwrap());
    stored.extend_from_slice(logo.bytes());
    for secret in SECRETS {
        assert!(!holds(&stored, secret), "{}", String::from_utf8_lossy(secret));
    }
    let picture = image::load_from_memory(logo.bytes()).unwrap().into_rgb8();
    assert_eq!((picture.width(), picture.height()), (200, 400));
    assert!(picture.get_pixel(100, 50)[0] > 180, "what was left in the file is on top");

    // A photo within a drawing, too.
    use base64::Engine as _;
    let within = base64::prelude::BASE64_STANDARD.encode(from_camera(40, 20));
    let drawn = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"><image width=\"9\" height=\"9\" \
         href=\"data:image/jpeg;base64,{within}\"/></svg>"
    );
    let logo = Logo::new(drawn.as_bytes()).unwrap();
    let svg = std::str::from_utf8(logo.bytes()).unwrap();
    let encoded = svg.split_once("base64,").unwrap().1.split('"').next().unwrap();
    let png = base64::prelude::BASE64_STANDARD.decode(encoded).unwrap();
    assert_eq!(image::guess_format(&png).unwrap(), ImageFormat::Png);
    assert!(SECRETS.iter().all(|secret| !holds(&png, secret)));
}
