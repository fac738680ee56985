using System.Reflection;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>All that was learned: what features weigh, which words were met, and from which probability a finding is plain.</summary>
internal sealed class ReaderModel : WordFamiliarity
{
    private const string Resource = "reader.weights";

    private static readonly Lazy<ReaderModel> OfProgram = new(Load);

    /// <summary>What comes with the program.</summary>
    public static ReaderModel Shipped => OfProgram.Value;

    /// <summary>The weights of the choices on the way.</summary>
    public required WeightTable Choices { get; init; }

    /// <summary>The weights of whole readings.</summary>
    public required WeightTable Wholes { get; init; }

    /// <summary>The weights of talk.</summary>
    public required WeightTable Talk { get; init; }

    /// <summary>The weights of doubt.</summary>
    public required WeightTable Doubt { get; init; }

    /// <summary>The words met in notes with findings.</summary>
    public required HashSet<int> Words { get; init; }

    /// <summary>From which probability a reading is plain.</summary>
    public required double PlainReading { get; init; }

    /// <summary>From which probability another finding is plain.</summary>
    public required double PlainOther { get; init; }

    public override bool IsFamiliar(int word) => Words.Contains(word);

    private static ReaderModel Load()
    {
        using var resource = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var bytes = new MemoryStream();
        resource.CopyTo(bytes);
        return ReaderModelFile.Read(bytes.ToArray());
    }
}
