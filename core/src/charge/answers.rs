//! Words that an answer is made of: each with a fixed number for C, a name for files and a plain sentence.

/// Defines an enumeration of answers. Numbers are never reused; names are the same in every language.
macro_rules! answers {
    ($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident = $number:literal $word:literal $sentence:literal;)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[non_exhaustive]
        #[repr(i32)]
        pub enum $name { $($(#[$vdoc])* $variant = $number),+ }

        impl $name {
            /// Every one of them, in the order of their numbers.
            pub const ALL: &[Self] = &[$(Self::$variant),+];

            /// The fixed number that the C interface uses.
            #[must_use]
            pub const fn number(self) -> i32 {
                self as i32
            }

            /// The word used in files and in every language.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $word),+ }
            }

            /// What it means or asks for, in plain words.
            #[must_use]
            pub const fn sentence(self) -> &'static str {
                match self { $(Self::$variant => $sentence),+ }
            }

            /// The one with that number, if there is one.
            #[must_use]
            pub fn from_number(number: i32) -> Option<Self> {
                Self::ALL.iter().copied().find(|answer| answer.number() == number)
            }
        }
    };
}
pub(crate) use answers;
