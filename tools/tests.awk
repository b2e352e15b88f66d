# Reads test reports (JUnit XML as Maven writes it); prints how many tests ran and which were
# skipped, with the reason. Ends with 1 when no test ran at all.

/<testcase / {
  tests++
  name = attribute($0, "classname") "." attribute($0, "name")
}

/<skipped/ {
  reason = attribute($0, "message")
  skipped[++skips] = name ": " (reason == "" ? "no reason given" : reason)
}

END {
  printf "%d tests ran.\n", tests - skips
  if (skips == 0) {
    print "Skipped: none."
  } else {
    printf "Skipped: %d\n", skips
    for (i = 1; i <= skips; i++) print "  " skipped[i]
  }
  exit (tests - skips > 0) ? 0 : 1
}

function attribute(line, key,    from, rest) {
  from = index(line, " " key "=\"")
  if (from == 0) return ""
  rest = substr(line, from + length(key) + 3)
  return substr(rest, 1, index(rest, "\"") - 1)
}
