using InspectLog.Doubts;

namespace InspectLog.Journal.Tests.Support;

/// <summary>Samples of doubts.</summary>
internal static class SomeDoubts
{
    /// <summary>One of each kind: those of the golden file, which stays as it is, and those that came after it.</summary>
    public static IReadOnlyList<Doubt> OneOfEach { get; } =
    [
        .. Some.OneOfEachDoubt,
        new WasNotUsed("0.35"),
        new Competes("supply-voltage", 12.4, 6),
        new OtherPlace(4),
        new PerhapsNegated(),
        new PerhapsNothing(),
        new SeldomSaidSo(),
    ];
}
