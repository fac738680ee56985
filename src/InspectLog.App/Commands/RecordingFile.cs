using System.Diagnostics.CodeAnalysis;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Commands;

/// <summary>Reads a recording named on the command line.</summary>
internal static class RecordingFile
{
    public static bool TryRead(
        string path, [NotNullWhen(true)] out PcmAudio? audio, [NotNullWhen(false)] out string? problem)
    {
        (audio, problem) = (null, null);
        try
        {
            // The size is looked at first, so that a wrong file name cannot fill the memory.
            if (new FileInfo(path).Length > WavFile.LargestFile)
                problem = $"The file is too large. A recording may last {WavFile.LongestRecording.TotalMinutes:0} minutes at most.";
            else
                (audio, problem) = ReadBytes(File.ReadAllBytes(path));
        }
        catch (FileNotFoundException)
        {
            problem = "There is no such file. Check the name.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problem = $"The file cannot be read: {e.Message}";
        }

        return audio is not null;
    }

    private static (PcmAudio? Audio, string? Problem) ReadBytes(byte[] bytes) => WavFile.Read(bytes) switch
    {
        WavResult.Ok recording => (recording.Audio, null),
        WavResult.Refused refused => (null, refused.Message),
        _ => throw new InvalidOperationException("A WAV file is a recording or is refused."),
    };
}
