import HoldfastCore

/// What the core asks for: each request goes to its part of the phone, and each answer back as an action.
extension HoldfastModel {
    func fulfil(_ request: Request) {
        switch request {
        case .startTicks(let everyMs): startTicks(everyMs)
        case .stopTicks: stopTicks()
        case .keepScreenOn: phone.light.keepLit()
        case .letScreenSleep: phone.light.letSleep()
        case .buzz(let pattern): phone.haptics.buzz(pattern)
        case .speak(let text, let language): phone.speech.say(text, language: language)
        case .takePhoto: errand { $0.photo(await $0.phone.camera.take()) }
        case .pickPhoto: errand { $0.photo(await $0.phone.pictures.pick()) }
        case .decodePicture(let path): errand { $0.decoded(await $0.phone.pictures.decode(path)) }
        case .pickBundle: errand { $0.bundle(await $0.phone.files.pickBundle()) }
        case .readBarometer: errand { $0.pressure(await $0.phone.barometer.read()) }
        case .watchGauge(let everyMs, let unit, let span): watchGauge(everyMs, unit, span)
        case .stopWatchingGauge: stopWatchingGauge()
        case .recordVibration(let forMs): errand { $0.vibration(await $0.phone.motion.record(forMs: forMs)) }
        case .share(let path, let mime, let title): phone.share.share(path: path, mime: mime, title: title)
        case .work(let id): errand { await $0.work(id) }
        }
    }

    /// A file with jobs came, from the picker or opened in another program; or none did.
    public func bundle(_ path: String?) {
        send(path.map { Action.bundleTaken(path: $0) } ?? Action.bundleNotTaken)
    }

    private func photo(_ path: String?) {
        send(path.map { Action.photoTaken(path: $0) } ?? Action.photoNotTaken)
    }

    private func decoded(_ path: String?) {
        send(path.map { Action.photoTaken(path: $0) } ?? Action.pictureNotDecoded)
    }

    private func pressure(_ pa: Double?) {
        send(pa.map { Action.barometerRead(pa: $0) } ?? Action.barometerMissing)
    }

    private func vibration(_ recording: VibrationRecording?) {
        send(recording.map { Action.vibrationRecorded(hz: $0.hz, mg: $0.mg) } ?? Action.vibrationNotRecorded)
    }

    private func work(_ id: UInt64) async {
        share = 0
        await core.work(id) { done in Task { @MainActor in self.share = done } }
        send(Action.workDone(id: id))
    }

    private func startTicks(_ everyMs: UInt32) {
        stopTicks()
        ticks = Task { [weak self, time = phone.time] in
            while await time.wait(ms: everyMs) { self?.send(Action.tick) }
        }
    }

    private func stopTicks() {
        ticks?.cancel()
        ticks = nil
    }

    private func watchGauge(_ everyMs: UInt32, _ unit: String, _ span: Double) {
        stopWatchingGauge()
        guard let reader = phone.gaugeReader else {
            send(Action.gaugeNotSeen)
            return
        }
        gauge = Task { [weak self] in
            for await look in reader.watch(everyMs: everyMs, unit: unit, span: span) {
                self?.send(Action.gaugeSeen(vacuum: look.vacuum))
            }
            if !Task.isCancelled { self?.send(Action.gaugeNotSeen) }
        }
    }

    private func stopWatchingGauge() {
        gauge?.cancel()
        gauge = nil
    }
}
