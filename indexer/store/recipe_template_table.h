#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/recipe.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct RecipeTemplate {
    std::string name;
    Recipe recipe;

    bool operator==(const RecipeTemplate&) const = default;
};

// Recipes of her own to start from. Names are alike when only their case differs.
class RecipeTemplateTable {
  public:
    explicit RecipeTemplateTable(Database& database) : database_(&database) {}

    void save(std::string_view name, const Recipe& recipe);  // replaces; refuses an empty name
    void remove(std::string_view name);                      // refuses a name that is not there
    std::optional<RecipeTemplate> find(std::string_view name);
    std::vector<RecipeTemplate> all();  // by name

  private:
    Database* database_;
};

}  // namespace quarterturn
