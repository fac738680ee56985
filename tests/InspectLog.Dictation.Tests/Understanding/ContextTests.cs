namespace InspectLog.Dictation.Tests.Understanding;

public sealed class ContextTests
{
    [Theory]
    [InlineData("Nine point four k.", "coil-secondary-resistance", "coil-secondary-resistance 9400")]
    [InlineData("Twelve one.", "supply-voltage", "supply-voltage 12.1")]
    [InlineData("Four, point nine.", "plug-gap", "plug-gap @4 0.9")]
    [InlineData("Three is sooty, four is wet.", "plug-condition", "plug-condition @3 sooty; plug-condition @4 wet")]
    [InlineData("Nothing on five.", "spark", "spark @5 no present")]
    [InlineData("Twelve point four volts at the ballast.", "coil-secondary-resistance", "supply-voltage 12.4")]
    public void The_open_check_stands_in_where_none_is_named(string text, string open, string findings) =>
        Assert.Equal(findings, Read.Line(text, open));

    [Theory]
    [InlineData("The seat is good.", "plug-condition")]
    [InlineData("My phone is on four percent.", "plug-gap")]
    [InlineData("Hello there, four coffees.", "plug-gap")]
    public void The_open_check_does_not_make_findings_of_other_talk(string text, string open) =>
        Assert.Empty(Read.Reader.Read(text, open));

    [Theory]
    [InlineData("Plug one sooty, gap point nine.", "plug-condition @1 sooty; plug-gap @1 0.9")]
    [InlineData("Lead five seven k and the boot is cracked.", "lead-resistance @5 7000; lead-condition @5 cracked")]
    [InlineData("Cylinder three: plug wet, lead chafed, spark weak.", "plug-condition @3 wet; lead-condition @3 chafed; spark @3 weak")]
    [InlineData("Took lead one off. Resistance is seven k. Put it back on.",
        "lead-condition @1 disconnected; lead-resistance @1 7000; lead-condition @1 reconnected")]
    [InlineData("The radiator cap is cracked, replaced it.", "")]
    public void What_was_spoken_of_goes_on(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void An_unknown_open_check_is_as_none() => Assert.Empty(Read.Reader.Read("Nine point four k.", "no-such-check"));

    [Fact]
    public void Words_point_into_the_text()
    {
        const string text = "Well, lead two is burnt at the manifold end.";
        var finding = Read.Single(text);

        Assert.Equal("lead two is burnt", finding.Words);
        Assert.Equal(text.IndexOf("lead", StringComparison.Ordinal), finding.Start);
        Assert.Equal(finding.Start + finding.Words.Length, finding.End);
    }
}
