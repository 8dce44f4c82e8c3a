//! A message of the reasoning in words: each typed argument becomes text in the shown unit.

use holdfast_diagnose::{Arg, Message};
use holdfast_measure::Pressure;

use super::{Args, Texts};

impl Texts {
    /// A message in words.
    ///
    /// Quantities go in twice, `$x` as text and `$x-n` as number for plurals; a part, test or fault goes in by its
    /// name, a part also in the forms its language has.
    #[must_use]
    pub fn message(&self, message: &Message) -> String {
        let args = message
            .args
            .iter()
            .fold(Args::new(), |args, (name, arg)| self.with_arg(args, name, arg));
        self.say_with(message.id.as_str(), &args)
    }

    /// Several messages, each in words.
    #[must_use]
    pub fn messages(&self, messages: &[Message]) -> Vec<String> {
        messages.iter().map(|message| self.message(message)).collect()
    }

    fn with_arg(&self, args: Args, name: &'static str, arg: &Arg) -> Args {
        match arg {
            Arg::Text(id) => args.text(name, self.say(id.as_str())),
            Arg::Words(words) => args.text(name, words.as_str()),
            Arg::Part(part) => self.with_part(args, name, part),
            Arg::Test(test) => args.text(name, self.test_title(test)),
            Arg::Fault(fault) => args.text(name, self.fault(fault)),
            Arg::Pressure(vacuum) => args.quantity(name, self.vacuum(*vacuum), self.shown_number(*vacuum)),
            Arg::Unit(unit) => args.text(name, unit.symbol()),
            Arg::Volts(volts) => args.quantity(name, self.volts(*volts), *volts),
            Arg::Ohms(ohms) => args.quantity(name, self.ohms(*ohms), *ohms),
            Arg::Amps(amperes) => args.quantity(name, self.amperes(*amperes), *amperes),
            Arg::Seconds(seconds) => args.quantity(name, self.seconds(*seconds), *seconds),
            Arg::Minutes(minutes) => args.quantity(name, self.minutes(*minutes), *minutes),
            Arg::Percent(share) => args.quantity(name, self.percent(*share), share * 100.0),
            Arg::Leak(leak) => args.quantity(name, self.leak(*leak), *leak),
            Arg::Cm3(cm3) => args.quantity(name, self.volume(*cm3), *cm3),
            Arg::Millimetres(mm) => args.quantity(name, self.millimetres(*mm), *mm),
            Arg::Metres(metres) => args.quantity(name, self.metres(*metres), *metres),
            Arg::Celsius(celsius) => args.quantity(name, self.celsius(*celsius), *celsius),
            Arg::Rpm(rpm) => args.quantity(name, self.rpm(*rpm), *rpm),
            Arg::Count(count) => args.quantity(name, self.number(*count as f64, 0), *count as f64),
            Arg::Times(times) => args.quantity(name, self.times(*times), *times),
        }
    }

    fn shown_number(&self, vacuum: Pressure) -> f64 {
        self.unit().from_pressure(vacuum)
    }
}
