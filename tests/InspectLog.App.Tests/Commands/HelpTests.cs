using System.CommandLine;
using System.CommandLine.Parsing;
using InspectLog.App.Commands;

namespace InspectLog.App.Tests.Commands;

public sealed class HelpTests
{
    private static readonly RootCommand Root = CommandLine.Root(Surroundings.OfProcess());

    public static TheoryData<string> Verbs => [.. Root.Subcommands.Where(verb => !verb.Hidden).Select(verb => verb.Name)];

    [Theory]
    [MemberData(nameof(Verbs))]
    public async Task Help_of_a_verb_describes_each_option_and_shows_examples(string verb)
    {
        var run = await CommandRun.OfAsync(verb, "--help");

        var command = Root.Subcommands.Single(command => command.Name == verb);
        Assert.All(command.Options, option => Assert.False(string.IsNullOrWhiteSpace(option.Description)));
        Assert.All(command.Options, option => Assert.Contains(option.Name, run.Out, StringComparison.Ordinal));
        Assert.All(command.Arguments, argument => Assert.False(string.IsNullOrWhiteSpace(argument.Description)));
        Assert.All(((Verb)command).Examples, example => Assert.Contains(example, run.Out, StringComparison.Ordinal));
        Assert.Contains("Exit codes:", run.Out, StringComparison.Ordinal);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void Examples_of_a_verb_are_command_lines_it_takes(string verb)
    {
        var examples = ((Verb)Root.Subcommands.Single(command => command.Name == verb)).Examples;

        Assert.NotEmpty(examples);
        Assert.All(examples, example =>
        {
            var words = CommandLineParser.SplitCommandLine(example.Split(" < ")[0]).ToList();
            Assert.Equal(["inspectlog", verb], words.Take(2));
            Assert.Empty(Root.Parse(words.Skip(1).ToList()).Errors);
        });
    }

    [Fact]
    public async Task No_arguments_show_the_verbs()
    {
        var run = await CommandRun.OfAsync();

        Assert.All(Root.Subcommands, verb => Assert.Equal(!verb.Hidden, run.Out.Contains($"  {verb.Name} ", StringComparison.Ordinal)));
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public async Task Unknown_verb_is_named()
    {
        var run = await CommandRun.OfAsync("inspekt");

        Assert.Equal("\"inspekt\" is not known here. See \"inspectlog --help\".\n", run.Error);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }
}
