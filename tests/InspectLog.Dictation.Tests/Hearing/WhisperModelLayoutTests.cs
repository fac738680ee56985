using CsCheck;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class WhisperModelLayoutTests
{
    private static readonly byte[] Shipped = File.ReadAllBytes(SpeechModels.Shipped().Whisper.Path);

    [Fact]
    public void Shipped_model_is_whole() => Assert.True(WhisperModelLayout.IsWhole(new MemoryStream(Shipped)));

    [Fact]
    public void Bytes_after_the_last_tensor_are_refused() =>
        Assert.False(WhisperModelLayout.IsWhole(new MemoryStream([.. Shipped, 0])));

    [Fact]
    public void Voice_activity_model_is_no_whisper_model()
    {
        using var file = File.OpenRead(SpeechModels.Shipped().VoiceActivity.Path);
        Assert.False(WhisperModelLayout.IsWhole(file));
    }

    [Fact]
    public void Model_cut_anywhere_is_refused() =>
        Gen.Int[0, Shipped.Length - 1].Sample(length => !WhisperModelLayout.IsWhole(new MemoryStream(Shipped, 0, length)), iter: 200);

    [Fact]
    public void Random_bytes_after_a_true_start_never_throw()
    {
        const int header = 48;
        Gen.Byte.Array[0, 400].Sample(bytes => !WhisperModelLayout.IsWhole(new MemoryStream([.. Shipped[..header], .. bytes])), iter: 20_000);
    }
}
