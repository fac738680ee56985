using InspectLog.Training;

return TrainingCommand.Run(args, Console.Out);
