using System.Threading.Channels;

namespace InspectLog.Dictation.Hearing.Worker;

/// <summary>The worker's side: takes recordings from its parent and answers with transcripts.</summary>
/// <remarks>Nothing else may write to the stream out, so a worker must not print to its standard output.</remarks>
public static class SpeechWorkerServer
{
    /// <summary>How long a decode may go on when the parent is gone. Native code hears a cancel only between its steps.</summary>
    private static readonly TimeSpan TimeToStop = TimeSpan.FromSeconds(5);

    /// <summary>Serves Whisper over this process's standard input and output until the parent closes its end.</summary>
    /// <param name="models">The model files.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    public static async Task RunWhisperAsync(SpeechModels models, CancellationToken cancellationToken)
    {
        // Not disposed: the process ends next, and a decode that hears no cancel would hold it up.
        var speech = new WhisperSpeech(models);
        await using var fromParent = Console.OpenStandardInput();
        await using var toParent = Console.OpenStandardOutput();
        await RunAsync(fromParent, toParent, speech, cancellationToken);
    }

    /// <summary>Serves until the stream in ends.</summary>
    /// <param name="fromParent">Frames from the client.</param>
    /// <param name="toParent">Frames to the client.</param>
    /// <param name="speech">What transcribes. A model is loaded before the client is told that the worker is ready.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="InvalidDataException">The stream in does not hold the client's frames.</exception>
    public static async Task RunAsync(Stream fromParent, Stream toParent, ISpeechToText speech, CancellationToken cancellationToken)
    {
        using var ending = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        var answers = Channel.CreateUnbounded<WorkerFrame>();
        var writing = WriteAsync(answers.Reader, toParent);
        var running = Task.CompletedTask;
        CancellationTokenSource? current = null;
        string? examples = null;
        try
        {
            await TryWarmUpAsync(speech, cancellationToken);
            answers.Writer.TryWrite(WorkerFrame.OfJson(WorkerMessage.Readiness, speech.Readiness));
            while (await WorkerFrame.ReadAsync(fromParent, cancellationToken) is { } frame)
            {
                if (frame.Message == WorkerMessage.Cancel)
                {
                    current?.Cancel();
                    continue;
                }

                if (frame.Message == WorkerMessage.Examples)
                {
                    examples = frame.Text;
                    continue;
                }

                if (frame.Message != WorkerMessage.Transcribe)
                    throw new InvalidDataException("The parent does not speak the worker's protocol.");

                await running;
                current?.Dispose();
                current = CancellationTokenSource.CreateLinkedTokenSource(ending.Token);
                running = StartAnswer(frame.ToAudio(), examples, current.Token);
                examples = null;
            }
        }
        finally
        {
            await ending.CancelAsync();
            await Task.WhenAny(running, Task.Delay(TimeToStop, CancellationToken.None));
            answers.Writer.Complete();
            await writing;
        }

        // On a thread of its own: this one is to hear of a cancel, or of the parent's end, whatever that one does.
        Task StartAnswer(PcmAudio audio, string? hints, CancellationToken cancel) =>
            Task.Run(() => AnswerAsync(audio, hints, speech, answers.Writer, cancel), CancellationToken.None);
    }

    private static async Task AnswerAsync(
        PcmAudio audio, string? examples, ISpeechToText speech, ChannelWriter<WorkerFrame> answers, CancellationToken cancellationToken)
    {
        try
        {
            var progress = new DirectProgress(share => answers.TryWrite(WorkerFrame.OfShare(share)));
            var transcript = await speech.TranscribeAsync(audio, examples, progress, cancellationToken);
            answers.TryWrite(WorkerFrame.OfJson(WorkerMessage.Transcript, transcript));
        }
        catch (OperationCanceledException)
        {
            answers.TryWrite(WorkerFrame.Of(WorkerMessage.Cancelled));
        }
        catch (SpeechUnavailableException e) when (e is not RecordingFailedException)
        {
            answers.TryWrite(WorkerFrame.OfText(WorkerMessage.Unavailable, e.Message));
        }
        catch (Exception e)
        {
            answers.TryWrite(WorkerFrame.OfText(WorkerMessage.Failed, e.Message));
        }
    }

    private static async Task TryWarmUpAsync(ISpeechToText speech, CancellationToken cancellationToken)
    {
        try
        {
            await speech.WarmUpAsync(cancellationToken);
        }
        catch (SpeechUnavailableException)
        {
            // The readiness that is sent next says why.
        }
    }

    private static async Task WriteAsync(ChannelReader<WorkerFrame> answers, Stream toParent)
    {
        try
        {
            await foreach (var answer in answers.ReadAllAsync())
                await answer.WriteAsync(toParent, CancellationToken.None);
        }
        catch (IOException)
        {
            // The parent is gone; the stream in ends too.
        }
    }

    /// <summary>Reports on the thread that works, so that progress cannot come after the transcript.</summary>
    private sealed class DirectProgress(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
