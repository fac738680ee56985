namespace InspectLog.App.Tests.Commands;

/// <summary>An empty name of a file or folder, such as a shell variable that was not set.</summary>
public sealed class EmptyPathTests
{
    [Theory]
    [InlineData("serve", "--data", "")]
    [InlineData("serve", "--data", " ")]
    [InlineData("rebuild", "--data", "")]
    [InlineData("verify", "")]
    [InlineData("import", "")]
    [InlineData("export", "--vehicle", "marigold", "--to", "")]
    [InlineData("understand", "--sheet", "ignition-breakerless-6", "--data", "", "spark on four")]
    [InlineData("transcribe", "")]
    [InlineData("transcribe", "--data", "", "note.wav")]
    public async Task Empty_name_is_bad_input_and_said_in_a_sentence(params string[] arguments)
    {
        var run = await CommandRun.OfAsync(arguments);

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        var line = Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Matches("needs the name of|is empty", line);
    }
}
