#include "indexer/rules/fair_pair.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace quarterturn {
namespace {

std::string figure(double value, int digits) {
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    return text;
}

bool exposure_differs(const PairFigures& figures) {
    return figures.light && std::abs(figures.light->exposure_ev) >= fair_exposure_ev;
}

bool colour_differs(const PairFigures& figures) {
    return figures.light && figures.light->white_balance_de00 >= fair_white_balance_de00;
}

bool size_differs(const PairFigures& figures) {
    return figures.size && (*figures.size >= fair_size || *figures.size <= 1 / fair_size);
}

bool turn_differs(const PairFigures& figures) {
    return figures.turn_degrees && std::abs(*figures.turn_degrees) >= fair_turn_degrees;
}

class Judge {
  public:
    void light(const std::optional<PairFigures::Light>& light) {
        if (!light) {
            return tell("How the light differs cannot be told: too little background shows.");
        }
        const std::string least = light->at_least ? "at least " : "";
        exposure(light->exposure_ev, least);
        const double colour = light->white_balance_de00;
        if (figure(colour, 1) == "0.0") {
            return tell("The colour of the light is the same, as far as the background shows.");
        }
        const std::string words = least + "ΔE00 " + figure(colour, 1) + " on the background.";
        if (colour >= fair_white_balance_de00) {
            unfair("The light has another colour in the second photo, by " + words);
        } else {
            tell("The colour of the light differs by " + words);
        }
    }

    void size(const std::optional<double>& size) {
        if (!size) return tell("How near the camera stood cannot be told.");
        const bool larger = *size >= 1;
        if (figure(larger ? *size : 1 / *size, 1) == "1.0") {
            return tell("The head is equally large in both photos.");
        }
        const std::string words = "The head is " + figure(larger ? *size : 1 / *size, 1) +
                                  " times as large in the " + (larger ? "second" : "first") +
                                  " photo";
        if (*size >= fair_size || *size <= 1 / fair_size) {
            unfair(words + ": the camera stood nearer, or the picture was cropped.");
        } else {
            tell(words + ".");
        }
    }

    void turn(const std::optional<double>& degrees) {
        if (!degrees) return tell("How the camera was turned cannot be told.");
        if (figure(std::abs(*degrees), 0) == "0") {
            return tell("The camera was held alike for both photos.");
        }
        const std::string words =
            "The camera was turned by " + figure(std::abs(*degrees), 0) + "° between the two.";
        if (std::abs(*degrees) >= fair_turn_degrees) return unfair(words);
        tell(words);
    }

    Fairness fairness;

  private:
    void tell(const std::string& sentence) { fairness.figures.push_back(sentence); }
    void unfair(const std::string& sentence) {
        fairness.unfair.push_back(sentence);
        tell(sentence);
    }

    void exposure(double ev, const std::string& least) {
        if (figure(std::abs(ev), 1) == "0.0") return tell("Both photos are equally bright.");
        const std::string words = "The second photo is " + least + figure(std::abs(ev), 1) +
                                  " EV " + (ev > 0 ? "brighter." : "darker.");
        if (std::abs(ev) >= fair_exposure_ev) return unfair(words);
        tell(words);
    }
};

}  // namespace

Fairness judge_fairness(const PairFigures& figures) {
    Judge judge;
    judge.light(figures.light);
    judge.size(figures.size);
    judge.turn(figures.turn_degrees);
    return judge.fairness;
}

std::string unfair_in_short(const PairFigures& figures) {
    std::string words;
    const auto add = [&](const std::string& part) { words += (words.empty() ? "" : ", ") + part; };
    if (exposure_differs(figures)) {
        const double ev = figures.light->exposure_ev;
        add(figure(std::abs(ev), 1) + (ev > 0 ? " EV brighter" : " EV darker"));
    }
    if (colour_differs(figures)) add("other light");
    if (size_differs(figures)) {
        add(figure(std::max(*figures.size, 1 / *figures.size), 1) + " times as large");
    }
    if (turn_differs(figures)) {
        add("tilted by " + figure(std::abs(*figures.turn_degrees), 0) + "°");
    }
    return words;
}

std::string not_taken_alike(const PairFigures& figures) {
    std::string words;
    const auto add = [&](bool differs, const char* what) {
        if (differs) words += (words.empty() ? "Not taken alike: " : ", ") + std::string(what);
    };
    add(exposure_differs(figures) || colour_differs(figures), "light");
    add(size_differs(figures), "distance");
    add(turn_differs(figures), "tilt");
    return words.empty() ? words : words + ".";
}

}  // namespace quarterturn
