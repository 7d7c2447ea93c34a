#include "indexer/rules/recipe/possible_numbers.h"

#include "indexer/record/recipe/fields.h"

namespace quarterturn {
namespace {

constexpr int most = 10'000;  // pins, minutes, millimetres, degrees

class NumberReader {
  public:
    template <class Value>
    void always(const char* name, const Value& value) {
        if (found.empty()) look(part_.empty() ? name : part_ + ", " + name, value);
    }
    template <class Value>
    void if_any(const char* name, const Value& value) {
        always(name, value);
    }

    std::string found;

  private:
    template <class Value>
    void look(const std::string& field, const Value& value) {
        if constexpr (std::same_as<Value, int> || std::same_as<Value, double>) {
            if (!(value >= 0 && value <= most)) refuse(field);
        } else if constexpr (std::same_as<Value, PlanPoint> || std::same_as<Value, std::string>) {
            return;  // a place on the head lies on both sides of its middle
        } else if constexpr (requires { value.has_value(); }) {
            if (value) look(field, *value);
        } else if constexpr (requires { value.begin(); }) {
            int number = 0;
            for (const auto& each : value) look(field + ' ' + std::to_string(++number), each);
        } else if constexpr (requires(NumberReader & reader) { visit_fields(reader, value); }) {
            const std::string whole = std::exchange(part_, field);
            visit_fields(*this, value);
            part_ = whole;
        }
    }
    void refuse(const std::string& field) {
        if (!found.empty()) return;
        found = "In the recipe, \"" + field + "\" cannot be so: write a number from 0 to " +
                std::to_string(most) + ", or leave it out.";
    }

    std::string part_;
};

}  // namespace

std::string impossible_number(const Recipe& recipe) {
    NumberReader reader;
    visit_fields(reader, recipe);
    return reader.found;
}

}  // namespace quarterturn
