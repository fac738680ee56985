namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>Collects features that have a size.</summary>
internal sealed class RealFeatures
{
    private readonly List<(uint Key, float Value)> _features = [];

    public int Scope { get; set; }

    public IReadOnlyList<(uint Key, float Value)> All => _features;

    public void Add(Feature feature, double value, int a = 0, int b = 0, int c = 0, int d = 0) =>
        _features.Add((FeatureList.Key(Scope, feature, a, b, c, d), (float)value));

    public void Has(Feature feature, int a = 0, int b = 0, int c = 0, int d = 0) => Add(feature, 1, a, b, c, d);
}
