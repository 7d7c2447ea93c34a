#pragma once

#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "ui/recipe/field.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class PhotoTiles;
class RecipeAids;

// Which of the look's photos belong to a step: chosen from all of them, or pasted.
class PhotosField : public Field {
    Q_OBJECT
  public:
    // Of more than `most`, the first ones go.
    explicit PhotosField(RecipeAids& aids, std::size_t most = 100, QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(const std::vector<std::string>& checksums);
    const std::vector<std::string>& value() const { return checksums_; }

    void put_in(const std::vector<std::string>& checksums);  // those that are not there yet
    void paste();  // what is in the clipboard is brought in as a photo of the look

    void turn(PhotoId photo);  // puts it in, or takes it out again

  private:
    void show_choice();

    void keep_the_newest();

    RecipeAids& aids_;
    std::size_t most_;
    QPushButton* choose_;
    QPushButton* paste_;
    QLabel* none_;
    PhotoTiles* choice_;
    std::vector<std::string> checksums_;
};

}  // namespace quarterturn
