using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Vocabulary;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.App.Listening;

/// <summary>Hears a voice note and reads it for findings.</summary>
public sealed class NoteReader(Garage garage, SheetLibrary sheets, ISpeechToText speech, BenchEvents events)
{
    /// <summary>What the journal is to say of a note: its transcript and findings, or why it cannot be read.</summary>
    /// <exception cref="RecordingFailedException">This recording cannot be transcribed.</exception>
    /// <exception cref="SpeechUnavailableException">Nothing can be transcribed now.</exception>
    public async Task<IReadOnlyList<EntryBody>> ReadAsync(
        WaitingRecording waiting, VoiceNote note, InspectionState inspection, CancellationToken cancellationToken) =>
        await LoadAsync(note.Recording.Media, cancellationToken) switch
        {
            WavResult.Ok when sheets.Of(inspection) is null => [new TranscriptFailed(
                waiting.Recording, "The check sheet of this inspection is missing, so what is said cannot be read for findings. Put the sheet back, then try again.")],
            WavResult.Ok recording => await HearAsync(waiting, note, sheets.Of(inspection)!, recording.Audio, cancellationToken),
            WavResult.Refused refused => [new TranscriptFailed(waiting.Recording, refused.Message)],
            _ => [new TranscriptFailed(waiting.Recording, "The recording is not in the media folder.")],
        };

    /// <summary>What else is recorded with what was read: photos taken just after it was said go where it was said to be.
    /// </summary>
    public IEnumerable<EntryBody> WhatFollows(VehicleState now, long inspection, IReadOnlyList<EntryBody> read) =>
        BenchScene.Of(now, sheets, inspection) is { Inspection.IsClosed: false } scene
            ? read.OfType<FindingsProposed>().SelectMany(findings => PhotoMending.Follow(scene, findings))
            : [];

    private async Task<WavResult?> LoadAsync(MediaFile media, CancellationToken stop) =>
        await StreamedBytes.ReadAsync(garage.Media.OpenAsync(media.Sha256, stop), stop) is { } file ? WavFile.Read(file) : null;

    private async Task<IReadOnlyList<EntryBody>> HearAsync(
        WaitingRecording waiting,
        VoiceNote note,
        CheckSheet sheet,
        PcmAudio audio,
        CancellationToken cancellationToken)
    {
        var ownWords = WorkshopWords.For(garage.Workshop, sheet);
        var examples = Examples(waiting.VehicleId, sheet, note.Recording.OpenCheck, ownWords);
        var transcript = await speech.TranscribeAsync(audio, examples, new PageProgress(events, waiting), cancellationToken);
        var readiness = speech.Readiness;
        return HeardEntries.Of(
            waiting.Recording,
            note.Recording,
            sheet,
            ownWords,
            transcript,
            readiness.Model,
            readiness.ModelSha256 ?? "");
    }

    private string? Examples(string vehicleId, CheckSheet sheet, string? openCheck, IReadOnlyList<OwnWord> ownWords) =>
        garage.FindVehicle(vehicleId) is { } vehicle
            ? ExampleFindings.Prompt(LimitsFor.Vehicle(vehicle, sheet), openCheck, ownWords)
            : null;

    /// <summary>Tells the pages at once, so that progress cannot come after the end.</summary>
    private sealed class PageProgress(BenchEvents events, WaitingRecording recording) : IProgress<double>
    {
        public void Report(double value) => events.Publish(
            recording.VehicleId, recording.Inspection, new BenchEvent.Progress(recording.Recording, value));
    }
}
