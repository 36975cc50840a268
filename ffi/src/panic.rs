//! The panic handler for targets without the standard library.
//!
//! Nothing in the library panics. The proof is in the linked program: this handler calls a function with a name of
//! its own, `satline_panic_reached`; if any path could panic, the linker would have to keep it. `tests/firmware/run`
//! checks that the name is absent, and that a program made to panic has it.

#[cfg(all(feature = "firmware", not(feature = "std"), not(test)))]
mod handler {
    /// Stops here for ever; a watchdog will find it.
    #[unsafe(no_mangle)]
    #[inline(never)]
    extern "C" fn satline_panic_reached() -> ! {
        loop {
            core::hint::spin_loop();
        }
    }

    #[panic_handler]
    fn panic(_: &core::panic::PanicInfo<'_>) -> ! {
        satline_panic_reached()
    }

    /// Panics when given zero. For the test that shows the marker can be found; linked only where it is called.
    #[cfg(feature = "panic-probe")]
    #[unsafe(no_mangle)]
    extern "C" fn satline_panic_probe(value: u32) -> u32 {
        100 / value
    }
}
