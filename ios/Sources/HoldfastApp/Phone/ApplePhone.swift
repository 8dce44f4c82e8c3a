import HoldfastKit

extension Phone {
    /// This phone.
    @MainActor
    public static func apple(data: DataFolder) -> Phone {
        Phone(
            time: PhoneClock(),
            light: ScreenLamp(),
            haptics: Buzzer(),
            speech: Voice(),
            camera: CameraSheet(),
            pictures: Gallery(),
            files: FilePicker(),
            share: ShareSheet(data: data),
            motion: Accelerometer(),
            barometer: AirPressure()
        )
    }
}
