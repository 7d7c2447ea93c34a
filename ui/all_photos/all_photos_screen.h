#pragma once

#include "ui/all_photos/found_photos.h"
#include "ui/shell/screen.h"

class QLabel;
class QLayout;
class QLineEdit;
class QStackedWidget;
class QTimer;

namespace quarterturn {

class BinPart;
class LaterFound;
class PhotoShelves;
class SearchChoices;

// Photos of everything: every photo of the library, the newest first, and the search for some.
class AllPhotosScreen : public Screen {
    Q_OBJECT
  public:
    explicit AllPhotosScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  private:
    void build();
    QWidget* build_header();
    QLayout* build_foot();
    void add_keys();
    PhotoSearch search() const;
    void look_again();
    void look_for_all();  // and wait for them
    void show_found(const std::vector<FoundPhoto>& found, bool all);
    QString nothing_found_words() const;
    void show_nothing_found();
    QString count_words(int count, bool all) const;
    void show_all();
    void show_bin();
    void move_chosen();  // into the bin, or out of it
    void open(PhotoId photo);

    Session& session_;
    FoundPhotos photos_;
    std::optional<PhotoSearch> shown_;
    LaterFound* later_;
    QStackedWidget* pages_;
    QWidget* empty_;
    QWidget* searching_;
    QLineEdit* words_;
    QLabel* count_;
    SearchChoices* choices_;
    BinPart* bin_;
    QStackedWidget* results_;
    PhotoShelves* shelves_;
    QWidget* nothing_ = nullptr;
    QTimer* typing_;
};

}  // namespace quarterturn
