namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>Probabilities and their logarithms. The exponential and the logarithm are our own, in operations that give the same
/// bits on every processor, so that the same data give the same weights everywhere.</summary>
internal static class Probabilities
{
    private const double Ln2 = 0.693147180559945309417232121458;
    private const int Bias = 1023;
    private const int Mantissa = 52;

    /// <summary>The logarithms of the probabilities of options by their scores.</summary>
    public static double[] LogOf(double[] scores)
    {
        var most = double.NegativeInfinity;
        foreach (var score in scores)
        {
            most = Math.Max(most, score);
        }

        var sum = 0.0;
        foreach (var score in scores)
        {
            sum += Exp(score - most);
        }

        var all = most + Log(sum);
        var logs = new double[scores.Length];
        for (var at = 0; at < scores.Length; at++)
        {
            logs[at] = scores[at] - all;
        }

        return logs;
    }

    /// <summary>e to the power of a number.</summary>
    public static double Exp(double power)
    {
        if (power < -700)
        {
            return 0;
        }

        power = Math.Min(power, 700);
        var whole = Math.Floor(power / Ln2 + 0.5);
        var rest = power - whole * Ln2;
        var (term, sum) = (1.0, 1.0);
        for (var n = 1; n <= 13; n++)
        {
            term *= rest / n;
            sum += term;
        }

        return sum * BitConverter.Int64BitsToDouble((long)(whole + Bias) << Mantissa);
    }

    /// <summary>The natural logarithm of a positive number.</summary>
    public static double Log(double number)
    {
        if (number <= 1e-300)
        {
            return -690.7755278982137;
        }

        var bits = BitConverter.DoubleToInt64Bits(number);
        var exponent = (bits >> Mantissa) - Bias;
        var fraction = BitConverter.Int64BitsToDouble(bits & 0xFFFFFFFFFFFFFL | (long)Bias << Mantissa);
        if (fraction > 1.4142135623730951)
        {
            (fraction, exponent) = (fraction / 2, exponent + 1);
        }

        var ratio = (fraction - 1) / (fraction + 1);
        var square = ratio * ratio;
        var (term, sum) = (ratio, 0.0);
        for (var n = 1; n <= 27; n += 2)
        {
            sum += term / n;
            term *= square;
        }

        return 2 * sum + exponent * Ln2;
    }

    /// <summary>The probability of which this is the log odds.</summary>
    public static double Logistic(double logOdds) => logOdds >= 0 ? 1 / (1 + Exp(-logOdds)) : Exp(logOdds) / (1 + Exp(logOdds));

    /// <summary>The log odds of a probability, kept within what can be told apart.</summary>
    public static double LogOdds(double probability) => Log(Math.Max(probability, 1e-4) / Math.Max(1 - probability, 1e-4));
}
