using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>An option that takes one of a few names.</summary>
internal static class NamedChoice
{
    /// <summary>The option. Names may differ in case; what else is given is refused with the list.</summary>
    /// <param name="name">The option's name.</param>
    /// <param name="description">What it chooses.</param>
    /// <param name="helpName">How the help calls its value.</param>
    /// <param name="choices">The names, and what each stands for; several may stand for the same.</param>
    public static Option<T> Option<T>(string name, string description, string helpName, params (string Name, T Value)[] choices)
        where T : struct => new(name)
    {
        Description = description,
        HelpName = helpName,
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            foreach (var choice in choices)
            {
                if (choice.Name.Equals(text, StringComparison.OrdinalIgnoreCase))
                    return choice.Value;
            }

            result.AddError($"\"{text}\" given with {name} is not known here. Use one of {string.Join(", ", choices.Select(choice => choice.Name))}.");
            return default;
        },
    };
}
