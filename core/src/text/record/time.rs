//! Times and dates as text, checked but not computed with: the clock is the host's.

use super::super::error::Fault;
use alloc::format;

const TIME: &str = "as in 2026-07-14T15:02:00Z: ISO 8601 in UTC, to the second or finer, ending in Z";
const DATE: &str = "as in 2026-03-01: ISO 8601, year, month and day";

/// When, in an order that compares.
pub(super) type When = (u32, u32, u32, u32, u32, f64);

/// A time in UTC.
pub(super) fn time(text: &str) -> Result<When, Fault> {
    let refused = || Fault::form(format!("\"{text}\" is not a time: write it {TIME}"));
    let (day, clock) = text.strip_suffix('Z').and_then(|text| text.split_once('T')).ok_or_else(refused)?;
    let (year, month, day) = calendar(day).ok_or_else(refused)?;
    let mut parts = clock.split(':');
    let (Some(hour), Some(minute), Some(second), None) = (parts.next(), parts.next(), parts.next(), parts.next())
    else {
        return Err(refused());
    };
    let (whole, fraction) = second.split_once('.').unwrap_or((second, "0"));
    let digits = !fraction.is_empty() && fraction.len() <= 9 && fraction.bytes().all(|byte| byte.is_ascii_digit());
    let (Some(hour), Some(minute), Some(_)) = (two(hour, 0, 23), two(minute, 0, 59), two(whole, 0, 60)) else {
        return Err(refused());
    };
    let second: f64 = second.parse().map_err(|_| refused())?;
    if digits { Ok((year, month, day, hour, minute, second)) } else { Err(refused()) }
}

/// A date.
pub(super) fn date(text: &str) -> Result<(), Fault> {
    calendar(text).map(|_| ()).ok_or_else(|| Fault::form(format!("\"{text}\" is not a date: write it {DATE}")))
}

fn calendar(text: &str) -> Option<(u32, u32, u32)> {
    let mut parts = text.split('-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    if parts.next().is_some() || year.len() != 4 || !year.bytes().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let year: u32 = year.parse().ok()?;
    let month = two(month, 1, 12)?;
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    let days = match month {
        2 if leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    };
    Some((year, month, two(day, 1, days)?))
}

/// Two digits within limits.
fn two(text: &str, lowest: u32, highest: u32) -> Option<u32> {
    let digits = text.len() == 2 && text.bytes().all(|byte| byte.is_ascii_digit());
    text.parse().ok().filter(|number| digits && (lowest..=highest).contains(number))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_and_dates_of_the_calendar() {
        assert!(time("2026-07-14T15:02:00Z").unwrap() < time("2026-07-14T15:02:00.25Z").unwrap());
        for good in ["2024-02-29T00:00:00Z", "2000-02-29T23:59:60Z", "2026-12-31T23:59:59.123456789Z"] {
            assert!(time(good).is_ok(), "{good}");
        }
        for bad in [
            "",
            "2026-07-14",
            "2026-07-14T15:02Z",
            "2026-07-14T15:02:00",
            "2026-07-14T15:02:00+02:00",
            "2026-07-14 15:02:00Z",
            "2026-02-29T00:00:00Z",
            "1900-02-29T00:00:00Z",
            "2026-13-01T00:00:00Z",
            "2026-07-14T24:00:00Z",
            "2026-07-14T15:60:00Z",
            "2026-07-14T15:02:61Z",
            "2026-07-14T15:02:+0Z",
            "2026-07-14T15:02:00.Z",
            "2026-07-14T15:02:00.1eZ",
            "26-07-14T15:02:00Z",
        ] {
            assert!(time(bad).unwrap_err().message.contains("ending in Z"), "{bad}");
        }
        assert!(date("2026-03-01").is_ok());
        for bad in ["2026-3-1", "01.03.2026", "2026-04-31", "2026-03-01T00:00:00Z", "+026-03-01"] {
            assert!(date(bad).is_err(), "{bad}");
        }
    }
}
