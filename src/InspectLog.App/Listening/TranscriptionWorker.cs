using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Record;

namespace InspectLog.App.Listening;

/// <summary>Transcribes recordings in the background, one at a time, the newest first, and reads them for findings.
/// What is waiting is read from the journals, so that a restart goes on where it stopped.</summary>
public sealed partial class TranscriptionWorker(
    Garage garage, ISpeechToText speech, BenchEvents events, TranscriptionSignal signal, ILogger<TranscriptionWorker> log)
    : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var givenUp = new HashSet<(string Vehicle, long Recording)>();
        while (!stoppingToken.IsCancellationRequested)
        {
            var next = garage.WaitingRecordings().LastOrDefault(one => !givenUp.Contains((one.VehicleId, one.Recording)));
            if (next is null || !speech.Readiness.Ready)
            {
                await signal.WaitAsync(stoppingToken);
                continue;
            }

            try
            {
                if (!await TranscribeAsync(next, stoppingToken))
                {
                    givenUp.Add((next.VehicleId, next.Recording));
                }
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }
            catch (SpeechUnavailableException problem)
            {
                LogUnavailable(problem.Message);
                events.Publish(next.VehicleId, next.Inspection, new BenchEvent.Changed());
                await signal.WaitAsync(stoppingToken);
            }
            catch (Exception problem)
            {
                // One note that cannot be written or read must not stop the program or the notes behind it. It stays
                // in the queue of the next start; trying again at once would fail again.
                LogGivenUp(problem, next.VehicleId, next.Recording);
                givenUp.Add((next.VehicleId, next.Recording));
            }
        }
    }

    /// <summary>Transcribes one recording; false when there is no such note after all.</summary>
    private async Task<bool> TranscribeAsync(WaitingRecording waiting, CancellationToken stoppingToken)
    {
        var inspection = garage.FindVehicle(waiting.VehicleId)?.Inspection(waiting.Inspection);
        if (inspection?.FindVoiceNote(waiting.Recording) is not { } note)
        {
            return false;
        }

        IReadOnlyList<EntryBody> bodies = Load(note.Recording.Media) switch
        {
            WavResult.Ok recording => await HearAsync(waiting, note.Recording, inspection.How.Sheet, recording.Audio, stoppingToken),
            WavResult.Refused refused => [new TranscriptFailed(waiting.Recording, refused.Message)],
            _ => [new TranscriptFailed(waiting.Recording, "The recording is not in the media folder.")],
        };
        garage.Append(waiting.VehicleId, JournalEntry.Program, _ => bodies);
        events.Publish(waiting.VehicleId, waiting.Inspection, new BenchEvent.Changed());
        return true;
    }

    private WavResult? Load(MediaFile media) =>
        garage.Media.PathOf(media.Sha256) is { } path ? WavFile.Read(File.ReadAllBytes(path)) : null;

    private async Task<IReadOnlyList<EntryBody>> HearAsync(
        WaitingRecording waiting,
        RecordingKept kept,
        string sheetId,
        PcmAudio audio,
        CancellationToken stoppingToken)
    {
        var progress = new Progress<double>(share => events.Publish(
            waiting.VehicleId, waiting.Inspection, new BenchEvent.Progress(waiting.Recording, share)));
        var transcript = await speech.TranscribeAsync(audio, progress, stoppingToken);
        var readiness = speech.Readiness;
        return HeardEntries.Of(waiting.Recording, kept, sheetId, transcript, readiness.Model, readiness.ModelSha256 ?? "");
    }

    [LoggerMessage(LogLevel.Warning, "Speech cannot be transcribed now: {Problem}")]
    private partial void LogUnavailable(string problem);

    [LoggerMessage(LogLevel.Error, "Recording {Recording} of {Vehicle} was not transcribed; it is kept for the next start.")]
    private partial void LogGivenUp(Exception problem, string vehicle, long recording);
}
