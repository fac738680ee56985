using InspectLog.Tests;

namespace InspectLog.Dictation.Tests.Hearing;

/// <summary>What is heard by the tests is what was recorded, and nobody put another recording in its place.</summary>
public sealed class RecordingHashTests
{
    [Theory]
    [InlineData("InspectLog.Dictation.Tests/Recordings", "*.wav")]
    [InlineData("InspectLog.Browser.Tests/Commands", "*.flac")]
    [InlineData("corpus/spoken", "*.flac")]
    public void Recordings_are_the_ones_whose_hashes_are_listed(string folder, string files) =>
        ListedHashes.Hold(Repository.PathOf("tests", folder), files);

    [Theory]
    [InlineData("model", "*.bin")]
    [InlineData("pronunciation", "*.dict")]
    public void Shipped_models_and_dictionary_are_the_ones_whose_hashes_are_listed(string folder, string files) =>
        ListedHashes.Hold(Repository.PathOf("src", "InspectLog.Dictation", folder), files);
}
