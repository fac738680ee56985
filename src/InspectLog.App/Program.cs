using System.Globalization;
using System.Text;
using InspectLog.App.Commands;

// Numbers and dates print the same on every machine, whatever its language.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Console.InputEncoding = Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

return await CommandLine.RunAsync(args, Surroundings.OfProcess());
