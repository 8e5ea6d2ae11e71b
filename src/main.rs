use gapwright::{assess::assess, job::{Shelf, file}};
fn main() {
    for arg in std::env::args().skip(1) {
        let loaded = file::load(std::path::Path::new(&arg)).unwrap();
        for p in &loaded.problems { println!("{}", p.words(&loaded.job)); }
        let t = std::time::Instant::now();
        let a = assess(&loaded.job, Shelf::built_in());
        println!("{:?}", t.elapsed());
        println!("{}\n{}\n{:?}", a.answer.headline, a.answer.cause, a.answer.missing);
        for p in &a.problems { println!("{}", p.words(&loaded.job)); }
        for s in &a.sections { println!("{} {}: {:?} now {:?} settled {:?} mean {:?} origin {:?} closes {:.2}", s.surface, s.section, s.gaps, s.now, s.settled.extremes(), s.settled.mean(), s.origin, s.closes_by_itself()); }
        for o in &a.options { println!("{} {:?} h={:?} days {} {} opens {:?} holds {:?}", o.name, o.price, o.hours, o.schedule.crew_days, o.schedule.calendar_days, o.opens_to.to_mm(), o.holds);
          for t in &o.tasks { println!("   {} {:.1} x {:?} = {:?}", t.name, t.batches, t.minutes, t.hours.mean); }
          for t in &o.materials { println!("   {} {:?} {} x {:?} = {:?}", t.name, t.need, t.pieces, t.price, t.amount); }
        }
        let kinds: Vec<String> = a.layouts.iter().flat_map(|l| l.joints.iter()).filter(|j| j.kind != gapwright::surface::JointKind::BoardEdge).map(|j| format!("{} {:?} {:.2}", j.label, j.kind, j.length().to_m())).collect();
        println!("{kinds:?} run {:?}", a.treated_run());
        if let Some(s) = &a.season { for w in s.weeks.iter().step_by(4) { println!("{} {:.2} tn {:.2} {:?}", w.day, s.share(w), w.too_narrow.to_m(), w.typical.map(|d| (d.stretch.to_pct().round(), d.squeeze.to_pct().round()))); } }
    }
}
