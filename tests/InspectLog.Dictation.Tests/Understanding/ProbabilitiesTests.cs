using CsCheck;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>The exponential and the logarithm of our own against those of the platform.</summary>
public sealed class ProbabilitiesTests
{
    [Fact]
    public void Exponential_is_that_of_the_platform() =>
        Gen.Double[-600, 600].Sample(power => Math.Abs(Probabilities.Exp(power) / Math.Exp(power) - 1) < 1e-13);

    [Fact]
    public void Logarithm_is_that_of_the_platform() =>
        Gen.Double[1e-200, 1e200].Sample(number => Math.Abs(Probabilities.Log(number) - Math.Log(number)) < 1e-12 * Math.Max(1, Math.Abs(Math.Log(number))));

    [Fact]
    public void Probabilities_of_options_add_up_to_one() =>
        Gen.Double[-50, 50].Array[1, 20].Sample(scores => Math.Abs(Probabilities.LogOf(scores).Sum(Probabilities.Exp) - 1) < 1e-12);
}
