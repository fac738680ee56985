using InspectLog.App.Bench;
using InspectLog.App.HandsFree;
using InspectLog.App.OwnWords;
using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Vocabulary;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.App.Listening;

/// <summary>Transcribes recordings in the background, one at a time, and reads them for findings. What is waiting is
/// read from the journals, so that a restart goes on where it stopped.</summary>
public sealed partial class TranscriptionWorker(
    Garage garage,
    ISpeechToText speech,
    SpokenControl control,
    BenchEvents events,
    TranscriptionSignal signal,
    RunningTranscription running,
    ILogger<TranscriptionWorker> log)
    : BackgroundService
{
    private readonly HashSet<WaitingRecording> _givenUp = [];

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        speech.BecameReady += OnBecameReady;
        try
        {
            await WarmUpAsync(stoppingToken);
            while (true)
            {
                if (speech.Readiness.Ready && Next() is { } next)
                {
                    await TryTranscribeAsync(next, stoppingToken);
                }
                else
                {
                    await signal.WaitAsync(stoppingToken);
                }
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The program is ending.
        }
        finally
        {
            speech.BecameReady -= OnBecameReady;
        }
    }

    private void OnBecameReady(object? sender, EventArgs e)
    {
        events.PublishToAll(new BenchEvent.Changed());
        signal.Raise();
    }

    private async Task WarmUpAsync(CancellationToken stoppingToken)
    {
        try
        {
            await speech.WarmUpAsync(stoppingToken);
        }
        catch (SpeechUnavailableException problem)
        {
            TellUnavailable(problem);
        }
    }

    private WaitingRecording? Next() =>
        WaitingOrder.Next(garage.WaitingRecordings().Where(one => !_givenUp.Contains(one)), events.IsFollowed);

    private async Task TryTranscribeAsync(WaitingRecording next, CancellationToken stoppingToken)
    {
        try
        {
            await running.RunAsync(
                next.VehicleId, next.Recording, cancellationToken => TranscribeAsync(next, cancellationToken), stoppingToken);
        }
        catch (OperationCanceledException) when (!stoppingToken.IsCancellationRequested)
        {
            // Cancelled by somebody, which the journal says already.
        }
        catch (RecordingFailedException problem)
        {
            LogFailed(problem.Message, next.VehicleId, next.Recording);
            SetAside(next, problem);
        }
        catch (SpeechUnavailableException problem)
        {
            TellUnavailable(problem);
            await signal.WaitAsync(stoppingToken);
        }
        catch (Exception problem) when (problem is not OperationCanceledException)
        {
            // One note that cannot be written or read must not stop the program or the notes behind it.
            LogGivenUp(problem, next.VehicleId, next.Recording);
            SetAside(next, problem);
        }
    }

    private async Task TranscribeAsync(WaitingRecording waiting, CancellationToken cancellationToken)
    {
        var inspection = garage.FindVehicle(waiting.VehicleId)?.Inspection(waiting.Inspection);
        if (inspection?.FindVoiceNote(waiting.Recording) is not { IsWaiting: true } note)
        {
            // There is no such note after all, or it was cancelled a moment ago.
            _givenUp.Add(waiting);
            return;
        }

        Append(waiting, Load(note.Recording.Media) switch
        {
            WavResult.Ok recording => await HearAsync(waiting, note, inspection, recording.Audio, cancellationToken),
            WavResult.Refused refused => [new TranscriptFailed(waiting.Recording, refused.Message)],
            _ => [new TranscriptFailed(waiting.Recording, "The recording is not in the media folder.")],
        });
    }

    private WavResult? Load(MediaFile media) =>
        garage.Media.PathOf(media.Sha256) is { } path ? WavFile.Read(File.ReadAllBytes(path)) : null;

    private async Task<IReadOnlyList<EntryBody>> HearAsync(
        WaitingRecording waiting,
        VoiceNote note,
        InspectionState inspection,
        PcmAudio audio,
        CancellationToken cancellationToken)
    {
        var ownWords = WorkshopWords.For(garage.Workshop, inspection.How.Sheet);
        var examples = Examples(waiting.VehicleId, inspection.How.Sheet, note.Recording.OpenCheck, ownWords);
        var transcript = await speech.TranscribeAsync(audio, examples, new PageProgress(events, waiting), cancellationToken);
        var readiness = speech.Readiness;
        return HeardEntries.Of(
            waiting.Recording,
            note.Recording,
            inspection.How.Sheet,
            ownWords,
            transcript,
            readiness.Model,
            readiness.ModelSha256 ?? "");
    }

    private string? Examples(string vehicleId, string sheetId, string? openCheck, IReadOnlyList<OwnWord> ownWords) =>
        BuiltInSheets.Find(sheetId) is { } sheet && garage.FindVehicle(vehicleId) is { } vehicle
            ? ExampleFindings.Prompt(LimitsFor.Vehicle(vehicle, sheet), openCheck, ownWords)
            : null;

    /// <summary>Records what became of a note, unless somebody cancelled it meanwhile, tells the pages, and obeys what was
    /// spoken and can be obeyed now.</summary>
    private void Append(WaitingRecording waiting, IReadOnlyList<EntryBody> bodies)
    {
        garage.Append(waiting.VehicleId, JournalEntry.Program, now =>
            now.Inspection(waiting.Inspection)?.FindVoiceNote(waiting.Recording) is { IsWaiting: true } ? bodies : []);
        events.Publish(waiting.VehicleId, waiting.Inspection, new BenchEvent.Changed());
        control.Obey(waiting.VehicleId, waiting.Inspection);
    }

    /// <summary>Takes a note out of the queue and says why on its page, where it can be asked for again.</summary>
    private void SetAside(WaitingRecording waiting, Exception problem)
    {
        try
        {
            Append(waiting, [new TranscriptFailed(waiting.Recording, problem.Message)]);
        }
        catch (Exception noEntry)
        {
            // Nothing can be written: it stays in the queue of the next start. Trying again at once would fail again.
            LogGivenUp(noEntry, waiting.VehicleId, waiting.Recording);
            _givenUp.Add(waiting);
        }
    }

    private void TellUnavailable(SpeechUnavailableException problem)
    {
        LogUnavailable(problem.Message);
        events.PublishToAll(new BenchEvent.Changed());
    }

    [LoggerMessage(LogLevel.Warning, "Speech cannot be transcribed now: {Problem}")]
    private partial void LogUnavailable(string problem);

    [LoggerMessage(LogLevel.Warning, "Recording {Recording} of {Vehicle} was set aside: {Problem}")]
    private partial void LogFailed(string problem, string vehicle, long recording);

    [LoggerMessage(LogLevel.Error, "Recording {Recording} of {Vehicle} was not transcribed; it is kept.")]
    private partial void LogGivenUp(Exception problem, string vehicle, long recording);

    /// <summary>Tells the pages at once, so that progress cannot come after the end.</summary>
    private sealed class PageProgress(BenchEvents events, WaitingRecording recording) : IProgress<double>
    {
        public void Report(double value) => events.Publish(
            recording.VehicleId, recording.Inspection, new BenchEvent.Progress(recording.Recording, value));
    }
}
