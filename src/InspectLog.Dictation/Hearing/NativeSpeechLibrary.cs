using Whisper.net;
using Whisper.net.LibraryLoader;

namespace InspectLog.Dictation.Hearing;

/// <summary>Loads whisper.cpp's native library for the processor only, and says plainly when that fails.</summary>
internal static class NativeSpeechLibrary
{
    /// <summary>Null when the library is loaded; else what is wrong and what to do.</summary>
    public static string? Load()
    {
        try
        {
            // Without this the loader first looks for every graphics library it knows of.
            RuntimeOptions.RuntimeLibraryOrder = [RuntimeLibrary.Cpu];
            return WhisperFactory.GetRuntimeInfo() is null ? Explain("it gave no answer") : null;
        }
        catch (Exception e)
        {
            return Explain(e.Message);
        }
    }

    internal static string Explain(string detail) =>
        "The speech library cannot be loaded. On Debian and Ubuntu it needs the packages libgomp1 and libstdc++6 "
        + "(apt install libgomp1 libstdc++6), and a processor with AVX2 on PCs. "
        + $"Recordings are kept and can be transcribed later. Detail: {detail}";
}
