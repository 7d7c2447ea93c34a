#pragma once

#include "tests/app/program.h"

namespace quarterturn {

// A wedding with two clients: Ada's look has a recipe of two steps, with a wait between them; Berit
// has no look.
class BoathouseTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        said({"client", "add", "Ada Lindqvist"});
        said({"client", "add", "Berit Lindqvist"});
        said({"wedding", "add", "Boathouse", "--date", "2027-05-15", "--ready-by", "12:30",
              "--party", "1=bride", "--party", "2=mother"});
        said({"look", "add", "1", "Low bun", "--wedding", "Boathouse"});
        said({"recipe", "set", "Low bun", "--part", "cautions=tender left ear", "--part",
              "build.1.words=curl on the tongs", "--part", "build.1.minutes=22", "--part",
              "build.1.waiting_minutes=15", "--part", "build.2.words=pin", "--part",
              "build.2.minutes=43"});
    }
};

inline bool says(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

}  // namespace quarterturn
