#pragma once

#include <QWidget>
#include <set>
#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

class PhotoTile;
class Session;

// Small pictures with their times, to choose from by click or Space.
class PhotoPicker : public QWidget {
    Q_OBJECT
  public:
    enum class Choice { none, one, several };  // none: only to be looked at

    PhotoPicker(Session& session, const std::vector<Photo>& photos, Choice choice,
                QWidget* parent = nullptr);

    std::vector<PhotoId> chosen() const { return {chosen_.begin(), chosen_.end()}; }

    static constexpr std::size_t most_shown = 60;

  signals:
    void choice_changed();

  private:
    void add_tile(const Photo& photo);
    void toggle(PhotoId photo);
    void show_tile(PhotoTile& tile);
    void ask_for_pictures();
    void show_picture(PhotoId photo);

    Session& session_;
    std::vector<Photo> photos_;
    Choice choice_;
    std::vector<PhotoTile*> tiles_;
    std::set<PhotoId> chosen_;
};

// A picture's caption: when it was taken, else the file's name.
QString moment_caption(const Photo& photo);

}  // namespace quarterturn
