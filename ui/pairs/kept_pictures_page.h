#pragma once

#include <QWidget>
#include <vector>

#include "indexer/record/inspiration.h"

class QLabel;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace quarterturn {

class FilePictures;
class LaidFrame;
class Notice;
class Session;

// The pictures that clients brought, each with whose it is and since when it is kept: one of them
// large, her looks like it, and taking it away. Somebody else's work: nothing here exports.
class KeptPicturesPage : public QWidget {
    Q_OBJECT
  public:
    explicit KeptPicturesPage(Session& session, QWidget* parent = nullptr);

    void show_pictures();  // reads the records; throws StoreError
    // From the question whether to remove one; answers whether she was there.
    bool leave_question();
    void say(const QString& problem);

  signals:
    void left();
    void like_asked(const quarterturn::Inspiration& picture);
    void picture_asked();  // to look for her looks like another one

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* build_top();
    QWidget* build_all();
    QWidget* build_one();
    QWidget* build_question();
    void fill_list();
    void show_icons();
    void show_one();
    void ask();
    void remove();
    const Inspiration* current() const;
    int large_edge() const;

    Session& session_;
    FilePictures* files_;
    std::vector<Inspiration> kept_;  // as the list shows them
    QStackedWidget* pages_;
    QListWidget* list_;
    LaidFrame* large_;
    QLabel* words_;
    Notice* problem_;
    QWidget* acts_;
    QPushButton* remove_;
    QWidget* question_;
    QLabel* asked_;
    QPushButton* keep_it_;
};

}  // namespace quarterturn
