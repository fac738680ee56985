namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>What it costs to take one sound for another, to lose one or to hear one too many. 0 is no difference, 1 about
/// the difference of two unlike consonants. The costs follow from where and how a sound is made (place, manner and
/// voice of consonants; height, depth and glide of vowels, as in the chart of the International Phonetic Alphabet), so
/// that what is made alike is confused cheaply. The weights are our own, chosen on the corpus; no source.</summary>
internal static class PhoneCosts
{
    private const double VoiceWeight = 0.25;
    private const double PlaceWeight = 0.15;
    private const double HeightWeight = 0.2;
    private const double DepthWeight = 0.2;
    private const double GlideWeight = 0.15;
    private const double RhoticWeight = 0.2;
    private const double MostOfVowels = 0.8;
    private const double AspirationCost = 0.5;
    private const double VowelForConsonant = 1.2;

    private enum Manner
    {
        Stop,
        Affricate,
        Fricative,
        Nasal,
        Liquid,
        Glide,
    }

    // Place from the lips back; one step is roughly one place of the chart.
    private readonly record struct Consonant(double Place, Manner Manner, bool Voiced);

    private readonly record struct Vowel(double Height, double Depth, bool Glides = false, bool Rhotic = false);

    private static readonly double[][] Substitutions = Table();
    private static readonly double[] Losses = [.. Enum.GetValues<Phone>().Select(LossOf)];

    /// <summary>The least cost of a sound too few or too many.</summary>
    public static double LeastLoss { get; } = Losses.Min();

    /// <summary>The costs of hearing a sound for each other one.</summary>
    public static ReadOnlySpan<double> Of(Phone one) => Substitutions[(int)one];

    /// <summary>The cost of a sound too few or too many.</summary>
    public static double Loss(Phone phone) => Losses[(int)phone];

    private static double[][] Table() =>
        [.. Enum.GetValues<Phone>().Select(one => Enum.GetValues<Phone>().Select(other => one == other ? 0 : Between(one, other)).ToArray())];

    private static double Between(Phone one, Phone other) => (Phones.IsVowel(one), Phones.IsVowel(other)) switch
    {
        (true, true) => Between(VowelOf(one), VowelOf(other)),
        (false, false) => Aspirated(one, other) ?? Between(ConsonantOf(one), ConsonantOf(other)),
        (true, false) => AcrossKinds(one, other),
        _ => AcrossKinds(other, one),
    };

    private static double Between(Vowel one, Vowel other) => Math.Min(
        MostOfVowels,
        HeightWeight * Math.Abs(one.Height - other.Height) + DepthWeight * Math.Abs(one.Depth - other.Depth)
        + (one.Glides == other.Glides ? 0 : GlideWeight) + (one.Rhotic == other.Rhotic ? 0 : RhoticWeight));

    private static double Between(Consonant one, Consonant other) => Math.Min(
        1,
        PlaceWeight * Math.Abs(one.Place - other.Place) + (one.Voiced == other.Voiced ? 0 : VoiceWeight)
        + MannerCost(one.Manner, other.Manner));

    // The breath after an opening p, t or k is an h, and in noise all that is left of it.
    private static double? Aspirated(Phone one, Phone other) => (one, other) switch
    {
        (Phone.HH, Phone.P or Phone.T or Phone.K) or (Phone.P or Phone.T or Phone.K, Phone.HH) => AspirationCost,
        _ => null,
    };

    private static double MannerCost(Manner one, Manner other) => one == other ? 0 : (Min(one, other), Max(one, other)) switch
    {
        (Manner.Stop, Manner.Affricate) or (Manner.Liquid, Manner.Glide) => 0.25,
        (Manner.Affricate, Manner.Fricative) => 0.2,
        (Manner.Stop, Manner.Fricative) or (Manner.Stop, Manner.Nasal) => 0.35,
        _ => 0.5,
    };

    private static Manner Min(Manner one, Manner other) => one < other ? one : other;

    private static Manner Max(Manner one, Manner other) => one < other ? other : one;

    private static double AcrossKinds(Phone vowel, Phone consonant) => (vowel, consonant) switch
    {
        (Phone.ER, Phone.R) => 0.2,
        (Phone.IY, Phone.Y) or (Phone.UW, Phone.W) => 0.3,
        (Phone.UH or Phone.OW, Phone.W) or (Phone.UH or Phone.OW, Phone.L) => 0.5,
        _ => VowelForConsonant,
    };

    private static double LossOf(Phone phone) => phone switch
    {
        Phone.T or Phone.D or Phone.HH or Phone.Y => 0.4,
        Phone.AH or Phone.IH or Phone.R => 0.45,
        Phone.S or Phone.Z or Phone.L or Phone.W => 0.5,
        Phone.N or Phone.M or Phone.NG or Phone.F or Phone.V or Phone.TH or Phone.DH => 0.55,
        Phone.P or Phone.B or Phone.K or Phone.G => 0.6,
        Phone.ER => 0.65,
        _ when Phones.IsVowel(phone) => 0.8,
        _ => 0.7,
    };

    private static Vowel VowelOf(Phone phone) => phone switch
    {
        Phone.IY => new(3, 0),
        Phone.IH => new(2.5, 0.3),
        Phone.EY => new(2, 0, Glides: true),
        Phone.EH => new(1.5, 0.3),
        Phone.AE => new(0.5, 0.3),
        Phone.AY => new(0.7, 0.8, Glides: true),
        Phone.AW => new(0.5, 1.5, Glides: true),
        Phone.AH => new(1.2, 1.2),
        Phone.ER => new(1.5, 1.2, Rhotic: true),
        Phone.AA => new(0, 1.5),
        Phone.AO => new(1, 2),
        Phone.OY => new(1.2, 1.7, Glides: true),
        Phone.OW => new(1.7, 2, Glides: true),
        // Most speakers make the u of "loose" and "boot" farther forward than the chart has it.
        Phone.UH => new(2.5, 1.4),
        Phone.UW => new(3, 1.4),
        _ => throw new ArgumentOutOfRangeException(nameof(phone)),
    };

    private static Consonant ConsonantOf(Phone phone) => phone switch
    {
        Phone.P => new(0, Manner.Stop, false),
        Phone.B => new(0, Manner.Stop, true),
        Phone.M => new(0, Manner.Nasal, true),
        Phone.W => new(0.5, Manner.Glide, true),
        Phone.F => new(0.5, Manner.Fricative, false),
        Phone.V => new(0.5, Manner.Fricative, true),
        Phone.TH => new(1, Manner.Fricative, false),
        Phone.DH => new(1, Manner.Fricative, true),
        Phone.T => new(1.5, Manner.Stop, false),
        Phone.D => new(1.5, Manner.Stop, true),
        Phone.N => new(1.5, Manner.Nasal, true),
        Phone.S => new(1.5, Manner.Fricative, false),
        Phone.Z => new(1.5, Manner.Fricative, true),
        Phone.L => new(1.5, Manner.Liquid, true),
        Phone.R => new(2, Manner.Liquid, true),
        Phone.SH => new(2.2, Manner.Fricative, false),
        Phone.ZH => new(2.2, Manner.Fricative, true),
        Phone.CH => new(2.2, Manner.Affricate, false),
        Phone.JH => new(2.2, Manner.Affricate, true),
        Phone.Y => new(2.7, Manner.Glide, true),
        Phone.K => new(3.5, Manner.Stop, false),
        Phone.G => new(3.5, Manner.Stop, true),
        Phone.NG => new(3.5, Manner.Nasal, true),
        Phone.HH => new(4.2, Manner.Fricative, false),
        _ => throw new ArgumentOutOfRangeException(nameof(phone)),
    };
}
