using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

[Collection(SpeechFixture.OneAtATime)]
[Trait("Takes", "long")]
public sealed class SpeechReadinessTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-models-");

    [Fact]
    public void Shipped_models_are_the_ones_whose_hashes_are_written_down()
    {
        var models = SpeechModels.Shipped();
        Assert.Equal(
            new ModelFileState("1c1046c4c40623c7d366c1015c57b20fbf95822f7eaefec05ce0173c7cd5ac8b", null), models.Whisper.Check());
        Assert.Equal(
            new ModelFileState("7589faf6fa057724488dfafa9766da709383d40126c2a45e3caef904cdf4a8c3", null), models.VoiceActivity.Check());
    }

    [Fact]
    public async Task Shipped_models_are_ready()
    {
        await using var speech = new WhisperSpeech(SpeechModels.Shipped());
        Assert.Equal(
            new SpeechReadiness(true, "ggml-base-garage-q8_0.bin", "1c1046c4c40623c7d366c1015c57b20fbf95822f7eaefec05ce0173c7cd5ac8b", null),
            speech.Readiness);
    }

    [Fact]
    public async Task Missing_model_is_named_with_what_to_do()
    {
        await using var speech = new WhisperSpeech(SpeechModels.ShippedIn(_folder.FullName));
        Assert.False(speech.Readiness.Ready);
        Assert.Contains("ggml-base-garage-q8_0.bin is missing", speech.Readiness.Problem, StringComparison.Ordinal);
        Assert.Contains("--model", speech.Readiness.Problem, StringComparison.Ordinal);
        await AssertUnavailable(speech);
    }

    [Fact]
    public async Task Damaged_model_is_refused_and_a_mended_one_taken_without_restart()
    {
        var shipped = SpeechModels.Shipped();
        var path = Path.Combine(_folder.FullName, shipped.Whisper.Name);
        File.Copy(shipped.VoiceActivity.Path, Path.Combine(_folder.FullName, shipped.VoiceActivity.Name));
        await WriteWithOneByteChanged(shipped.Whisper.Path, path);

        await using var speech = new WhisperSpeech(SpeechModels.ShippedIn(_folder.FullName));
        Assert.Contains("is damaged", speech.Readiness.Problem, StringComparison.Ordinal);
        await AssertUnavailable(speech);

        File.Copy(shipped.Whisper.Path, path, overwrite: true);
        Assert.True(speech.Readiness.Ready);
        var heard = await speech.TranscribeAsync(SpeechFixture.Recording("ps_librivox_0880.wav"), null, TestContext.Current.CancellationToken);
        Assert.NotEmpty(heard.Text);
    }

    [Fact]
    public async Task Other_model_of_any_hash_is_taken()
    {
        var path = Path.Combine(_folder.FullName, "modèle à moi.bin");
        File.Copy(SpeechModels.Shipped().Whisper.Path, path);
        await using var speech = new WhisperSpeech(SpeechModels.With(path));
        Assert.Equal("modèle à moi.bin", speech.Readiness.Model);
        var heard = await speech.TranscribeAsync(SpeechFixture.Recording("ps_librivox_0880.wav"), null, TestContext.Current.CancellationToken);
        Assert.NotEmpty(heard.Text);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(4_000)]
    public async Task File_that_is_no_model_is_refused_before_native_code_sees_it(int length)
    {
        var path = Path.Combine(_folder.FullName, "notes.txt");
        await File.WriteAllBytesAsync(path, new byte[length], TestContext.Current.CancellationToken);
        await using var speech = new WhisperSpeech(SpeechModels.With(path));
        Assert.Contains("is not a whole speech model", speech.Readiness.Problem, StringComparison.Ordinal);
        await AssertUnavailable(speech);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(40)]
    [InlineData(100_000)]
    [InlineData(2_000_000)]
    [InlineData(40_000_000)]
    [InlineData(81_768_584)]
    public async Task Other_model_that_is_cut_off_is_refused_before_native_code_sees_it(int length)
    {
        var path = Path.Combine(_folder.FullName, "short.bin");
        await using (var whole = File.OpenRead(SpeechModels.Shipped().Whisper.Path))
        {
            var start = new byte[length];
            await whole.ReadExactlyAsync(start, TestContext.Current.CancellationToken);
            await File.WriteAllBytesAsync(path, start, TestContext.Current.CancellationToken);
        }

        await using var speech = new WhisperSpeech(SpeechModels.With(path));
        await AssertUnavailable(speech);
        Assert.Contains("short.bin is not a whole speech model", speech.Readiness.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whole_file_that_native_code_refuses_is_told_and_stays_refused()
    {
        var path = Path.Combine(_folder.FullName, "renamed.bin");
        var bytes = await File.ReadAllBytesAsync(SpeechModels.Shipped().Whisper.Path, TestContext.Current.CancellationToken);
        var name = bytes.AsSpan().IndexOf("encoder.conv1.weight"u8);
        bytes[name] = (byte)'x';
        await File.WriteAllBytesAsync(path, bytes, TestContext.Current.CancellationToken);

        await using var speech = new WhisperSpeech(SpeechModels.With(path));
        Assert.True(speech.Readiness.Ready);
        await AssertUnavailable(speech);
        Assert.Contains("renamed.bin cannot be loaded", speech.Readiness.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Native_library_that_cannot_load_is_told_with_the_packages_it_wants()
    {
        await using var speech = new WhisperSpeech(SpeechModels.Shipped(), () => NativeSpeechLibrary.Explain("libgomp.so.1 not found"));
        Assert.Contains("libgomp1 and libstdc++6", speech.Readiness.Problem, StringComparison.Ordinal);
        await AssertUnavailable(speech);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static async Task AssertUnavailable(WhisperSpeech speech)
    {
        var thrown = await Assert.ThrowsAsync<SpeechUnavailableException>(
            () => speech.TranscribeAsync(Sounds.Silence(1), null, TestContext.Current.CancellationToken));
        Assert.Contains("Recordings are kept", thrown.Message, StringComparison.Ordinal);
        Assert.False(speech.Readiness.Ready);
    }

    private static async Task WriteWithOneByteChanged(string from, string to)
    {
        var bytes = await File.ReadAllBytesAsync(from, TestContext.Current.CancellationToken);
        bytes[bytes.Length / 2] ^= 1;
        await File.WriteAllBytesAsync(to, bytes, TestContext.Current.CancellationToken);
    }
}
