using InspectLog.Dictation.Hearing;

namespace InspectLog.Benchmarks.Dictation.Voices;

/// <summary>A busy garage behind a voice, made by arithmetic and the same every time: pink noise, the hum of a
/// compressor, and knocks.</summary>
/// <remarks>The level of the speech is the mean square over its active frames (20 ms frames within 35 dB of the
/// loudest), a stand-in for the active speech level of ITU-T P.56; that of the noise is its mean square over all.</remarks>
internal static class GarageNoise
{
    private const int Rate = PcmAudio.SampleRate;
    private const int Frame = Rate / 50;
    private const double ActiveWithin = 35;

    /// <summary>Noise before and after the speech.</summary>
    private const int Around = Rate * 3 / 10;

    private const double LoudestPeak = 0.99;

    /// <summary>The speech in noise.</summary>
    /// <param name="speech">The speech.</param>
    /// <param name="signalToNoise">Decibels.</param>
    /// <param name="seed">Which noise.</param>
    public static PcmAudio Behind(PcmAudio speech, double signalToNoise, int seed)
    {
        var mixed = Make(speech.Samples.Length + (2 * Around), seed);
        var gain = Math.Sqrt(ActivePower(speech.Samples.Span) / Power(mixed)) / Math.Pow(10, signalToNoise / 20);
        for (var i = 0; i < mixed.Length; i++)
        {
            mixed[i] = (float)(mixed[i] * gain);
        }

        for (var i = 0; i < speech.Samples.Length; i++)
        {
            mixed[Around + i] += speech.Samples.Span[i];
        }

        var peak = mixed.Max(MathF.Abs);
        return new PcmAudio(peak <= LoudestPeak ? mixed : [.. mixed.Select(sample => (float)(sample * LoudestPeak / peak))]);
    }

    private static float[] Make(int length, int seed)
    {
        var random = new Random(seed);
        var pink = new double[3];
        var phase = random.NextDouble();
        var knocksASecond = 1 + (3 * random.NextDouble());
        var samples = new float[length];
        for (var i = 0; i < length; i++)
        {
            var t = (double)i / Rate;
            var hum = Sine(50, t) + (0.6 * Sine(100, t)) + (0.4 * Sine(150, t));
            var sinceKnock = ((t * knocksASecond) + phase) % 1 / knocksASecond;
            var knock = Math.Exp(-sinceKnock * 60) * (Sine(2_400, t) + Sine(3_700, t) + White(random));
            samples[i] = (float)((0.5 * Pink(pink, White(random))) + (0.1 * hum) + (0.4 * knock));
        }

        return samples;
    }

    /// <summary>White noise to pink by three leaky integrators whose corners lie apart (P. Kellet's economy filter, its
    /// figures from memory).</summary>
    private static double Pink(double[] state, double white)
    {
        state[0] = (0.99765 * state[0]) + (0.0990460 * white);
        state[1] = (0.96300 * state[1]) + (0.2965164 * white);
        state[2] = (0.57000 * state[2]) + (1.0526913 * white);
        return (state.Sum() + (0.1848 * white)) / 3;
    }

    private static double White(Random random) => (2 * random.NextDouble()) - 1;

    private static double Sine(double hertz, double t) => Math.Sin(2 * Math.PI * hertz * t);

    private static double ActivePower(ReadOnlySpan<float> samples)
    {
        var powers = new List<double>();
        for (var at = 0; at + Frame <= samples.Length; at += Frame)
        {
            powers.Add(Power(samples.Slice(at, Frame)));
        }

        var quietest = powers.Max() / Math.Pow(10, ActiveWithin / 10);
        return powers.Where(power => power >= quietest).Average();
    }

    private static double Power(ReadOnlySpan<float> samples)
    {
        var sum = 0.0;
        foreach (var sample in samples)
        {
            sum += (double)sample * sample;
        }

        return sum / samples.Length;
    }
}
