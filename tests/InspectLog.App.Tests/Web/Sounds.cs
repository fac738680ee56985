using System.Buffers.Binary;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Tests.Web;

/// <summary>Recordings made of arithmetic, for tests that do not listen.</summary>
public static class Sounds
{
    /// <summary>A quiet tone of one second.</summary>
    /// <param name="step">The tone's phase from sample to sample; another step is another recording.</param>
    public static byte[] Tone(float step = 0.3f) => WavFile.Write(new PcmAudio(
        Enumerable.Range(0, PcmAudio.SampleRate).Select(i => 0.1f * MathF.Sin(i * step)).ToArray()));

    /// <summary>Silence a minute longer than is taken, with headers that say so.</summary>
    public static byte[] ElevenMinutes()
    {
        var header = Tone().AsSpan(0, 44);
        var file = new byte[44 + (11 * 60 * PcmAudio.SampleRate * 2)];
        header.CopyTo(file);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), file.Length - 8);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(40), file.Length - 44);
        return file;
    }
}
