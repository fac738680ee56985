using InspectLog.App.HandsFree;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.HandsFree;

/// <summary>Answers as they are said aloud.</summary>
public sealed class AloudTests
{
    [Theory]
    [InlineData("Coil secondary: 10.6\u00a0kΩ, would be a pass.", "Coil secondary: 10.6 kilohms, would be a pass.")]
    [InlineData("0.30\u00a0mm goes, 0.35\u00a0mm stops", "0.30 millimetres goes, 0.35 millimetres stops")]
    [InlineData("\u22128\u00a0°.", "minus 8 degrees.")]
    [InlineData("8°", "8 degrees")]
    [InlineData("84 in 100", "84 in 100")]
    [InlineData("Lead 3: burnt.", "Lead 3: burnt.")]
    public void Units_are_said_as_words(string answer, string aloud) => Assert.Equal(aloud, Aloud.Of(answer));

    [Fact]
    public void Every_unit_the_program_knows_has_words() =>
        Assert.All(Units.All, unit => Assert.Matches("^1 [A-Za-z ]{3,}$", Aloud.Of($"1\u00a0{unit.Symbol}")));
}
