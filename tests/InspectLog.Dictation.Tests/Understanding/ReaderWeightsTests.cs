using System.Security.Cryptography;
using InspectLog.Benchmarks.Dictation;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Training;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class ReaderWeightsTests
{
    private static string Folder { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Corpus.File("look.jsonl"))!, "..", "..", "src", "InspectLog.Dictation", "weights"));

    [Fact]
    public void Weights_have_the_hash_that_stands_beside_them() =>
        Assert.Equal($"{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(Folder, "reader.weights"))))}  reader.weights", File.ReadAllText(Path.Combine(Folder, "SHA256SUMS")).TrimEnd());

    [Fact]
    public void Weights_that_ship_are_those_in_the_folder() =>
        Assert.Equal(ReaderModelFile.Read(File.ReadAllBytes(Path.Combine(Folder, "reader.weights"))).Choices.Count, ReaderModel.Shipped.Choices.Count);

    // Four minutes of both processors, and byte for byte on one kind of processor only: by hand, after each training.
    [Fact(Explicit = true)]
    public void Weights_are_what_the_command_makes_of_the_corpus() =>
        Assert.Equal(File.ReadAllBytes(Path.Combine(Folder, "reader.weights")), ReaderTraining.Train(TextWriter.Null));

    [Fact]
    public void File_that_is_cut_short_is_refused()
    {
        var file = File.ReadAllBytes(Path.Combine(Folder, "reader.weights"));

        Assert.Throws<InvalidDataException>(() => ReaderModelFile.Read(file.AsSpan(0, file.Length / 2)));
        Assert.Throws<InvalidDataException>(() => ReaderModelFile.Read([1, 2, 3, 4, 5, 6, 7, 8]));
    }
}
