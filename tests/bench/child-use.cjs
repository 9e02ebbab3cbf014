// Loaded first into a process that is measured: tells what it used as it ends.

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  require("node:fs").writeSync(3, JSON.stringify({ ms: (userCPUTime + systemCPUTime) / 1000, mb: maxRSS / 1024 }));
});
