using System.CommandLine;
using Nookwright.Bench;

var rows = new (string Name, string What, Func<BenchOptions, ResultSection> Run)[]
{
    ("jobs", "100 ordinary jobs of 60 to 75 parts", OrdinaryJobs.Run),
    ("oriented", "the 500 public instances, parts not turned", o => PublicBins.Run(o, mayTurn: false)),
    ("rotated", "the 500 public instances, parts may turn", o => PublicBins.Run(o, mayTurn: true)),
    (
        "wood",
        "43 instances of a wood company",
        o => NamedBins.Run(o, "wood", "a43_wood.txt", "The 43 instances of a wood company", NamedBins.PublishedWood)
    ),
    (
        "bengtsson",
        "Bengtsson's 10 instances",
        o => NamedBins.Run(o, "bengtsson", "beng10.txt", "Bengtsson's 10 instances", NamedBins.PublishedBengtsson)
    ),
    ("large", "200, 1,000 and 5,000 parts", LargeJobs.Run),
    ("exact", "ordinary jobs side by side with a plain CP-SAT model", SideBySide.Run),
};

var options = new BenchOptionSet();
var root = new RootCommand("Measures the planner and writes the figures to bench/RESULTS.md.");
foreach (var row in rows)
    root.Add(options.CommandOf(row.Name, row.What, row.Run));
return root.Parse(args).Invoke();
