#pragma once

#include <string>

#include "ui/recipe/field.h"

namespace quarterturn {

class PhotosField;
class PhotoTiles;
class RecipeAids;

// One photo of the look, or none.
class OnePhotoField : public Field {
    Q_OBJECT
  public:
    explicit OnePhotoField(RecipeAids& aids, QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(const std::string& checksum);
    std::string value() const;

  private:
    void show_photo();

    RecipeAids& aids_;
    PhotoTiles* chosen_;
    PhotosField* choice_;
};

}  // namespace quarterturn
