using InspectLog.App.Bench;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Record;

namespace InspectLog.App.Listening;

/// <summary>Transcribes recordings in the background, one at a time, and reads them for findings. What is waiting is
/// read from the journals, so that a restart goes on where it stopped.</summary>
public sealed partial class TranscriptionWorker(
    Garage garage,
    ISpeechToText speech,
    NoteReader reader,
    SpokenControl control,
    BenchEvents events,
    TranscriptionSignal signal,
    RunningTranscription running,
    SpeechLoading loading,
    ILogger<TranscriptionWorker> log)
    : BackgroundService
{
    private readonly HashSet<WaitingRecording> _givenUp = [];

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        speech.BecameReady += OnBecameReady;
        try
        {
            if (loading.AtStart)
            {
                await WarmUpAsync(stoppingToken);
            }

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

        Append(waiting, await reader.ReadAsync(waiting, note, inspection, cancellationToken));
    }

    /// <summary>Records what became of a note, unless somebody cancelled it meanwhile, tells the pages, and obeys what was
    /// spoken and can be obeyed now.</summary>
    private void Append(WaitingRecording waiting, IReadOnlyList<EntryBody> bodies)
    {
        garage.Append(waiting.VehicleId, JournalEntry.Program, now =>
            now.Inspection(waiting.Inspection)?.FindVoiceNote(waiting.Recording) is { IsWaiting: true }
                ? [.. bodies, .. reader.WhatFollows(now, waiting.Inspection, bodies)]
                : []);
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
}
