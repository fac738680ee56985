using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;
using InspectLog.Photos.Worker;
using InspectLog.TestWorker;

// A speech or photo worker for the tests: the real one, or one that misbehaves in a given way.
switch (args)
{
    case ["whisper"]:
        await SpeechWorkerServer.RunWhisperAsync(SpeechModels.Shipped(), CancellationToken.None);
        return 0;
    case ["whisper", var model]:
        await SpeechWorkerServer.RunWhisperAsync(SpeechModels.With(model), CancellationToken.None);
        return 0;
    case ["real-photos"]:
        await PhotoWorkerServer.RunAsync();
        return 0;
    case ["photos"]:
        await ScriptedPhotos.RunAsync(null);
        return 0;
    case ["photos", var file]:
        await ScriptedPhotos.RunAsync(file);
        return 0;
    case ["ends-at-once"]:
        await Console.Error.WriteLineAsync("no memory");
        return 134;
    case ["garbage"]:
        Console.Write("Hello, I am not a worker at all.");
        Thread.Sleep(Timeout.Infinite);
        return 0;
    case ["scripted", .. var behaviours]:
        await using (var fromParent = Console.OpenStandardInput())
        await using (var toParent = Console.OpenStandardOutput())
            await SpeechWorkerServer.RunAsync(fromParent, toParent, new ScriptedSpeech(behaviours), CancellationToken.None);
        return 0;
    default:
        return 2;
}
